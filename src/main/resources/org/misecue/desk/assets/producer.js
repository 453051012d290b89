// On both pages of the producer: plays moments, keeps what is being typed when a page follows the files, and remembers
// who decides as long as the window is open.
"use strict";

(() => {
  const BEFORE = 2;
  const AFTER = 6;
  const film = document.getElementById("film");
  const place = document.getElementById("film-place");
  const says = document.getElementById("film-says");
  let until = Infinity;
  let asked = 0;

  document.addEventListener("click", (event) => {
    const button = event.target.closest("button.play");
    if (button) {
      play(button.dataset.film, Number(button.dataset.at));
    }
  });

  async function play(address, at) {
    const mine = ++asked;
    place.hidden = false;
    film.pause();
    tell("");
    const state = await playable(address, () => mine === asked);
    if (mine !== asked || !state?.src) {
      return;
    }
    if (at >= state.seconds) {
      tell("The film ends before this moment.");
      return;
    }
    if (film.dataset.src !== state.src) {
      film.dataset.src = state.src;
      film.src = state.src;
    }
    until = at + AFTER;
    film.currentTime = Math.max(0, at - BEFORE);
    film.play().catch((not) => {
      if (not.name === "NotAllowedError") {
        tell("This browser does not begin by itself; press play in the film.");
      }
    });
  }

  film.addEventListener("timeupdate", () => {
    if (film.currentTime >= until) {
      film.pause();
      until = Infinity; // whoever presses play then hears on
    }
  });
  film.addEventListener("error", () => tell("The film cannot be played here."));

  document.getElementById("film-away").addEventListener("click", () => {
    asked++;
    film.pause();
    place.hidden = true;
  });

  // The camera's own file where the browser can play it, else a smaller copy, which is made now.
  async function playable(address, wanted) {
    let state = await json(address + "/state");
    if (state && !state.src && !state.wrong) {
      state = await json(address + "/proxy", { method: "POST" });
    }
    while (wanted() && state && !state.src && !state.wrong) {
      tell(`A copy that this browser can play is being made: ${state.making ?? 0} %`);
      await new Promise((done) => setTimeout(done, 700));
      state = await json(address + "/state");
    }
    tell(state ? state.wrong : "The film cannot be played here.");
    return state;
  }

  async function json(address, how) {
    try {
      const answer = await fetch(address, how);
      return answer.ok ? await answer.json() : null;
    } catch (gone) {
      return null;
    }
  }

  function tell(sentence) {
    says.textContent = sentence ?? "";
  }

  // A page that follows the files is drawn anew under somebody's hands: what they typed and unfolded stays, and so does
  // their place. While the files are worked out there is nothing to put it into, so it waits.
  const kept = new Map();
  let hand = null;

  document.body.addEventListener("htmx:beforeSwap", (event) => {
    const { target, requestConfig } = event.detail;
    if (requestConfig.verb !== "get") {
      return;
    }
    for (const field of target.querySelectorAll("input[id], textarea[id], details[id]")) {
      if (state(field) !== firstState(field)) {
        kept.set(key(field), state(field));
      }
    }
    const at = document.activeElement;
    if (at.id && target.contains(at)) {
      hand = { id: at.id, from: at.selectionStart, to: at.selectionEnd };
    }
  });

  document.body.addEventListener("htmx:afterSwap", () => {
    for (const field of document.querySelectorAll("input[id], textarea[id], details[id]")) {
      if (kept.has(key(field))) {
        put(field, kept.get(key(field)));
        kept.delete(key(field));
      }
    }
    const at = hand && document.getElementById(hand.id);
    if (at) {
      if (document.activeElement !== at) {
        at.focus({ preventScroll: true });
      }
      if (hand.from != null) {
        at.setSelectionRange(hand.from, hand.to);
      }
      hand = null;
    }
  });

  // Words are kept only for the very words that they were typed over.
  const key = (field) => field.id + " " + (field.form?.elements.was?.value ?? "");
  const property = (field) => (field.type === "radio" || field.type === "checkbox" ? "checked" : field.localName === "details" ? "open" : "value");
  const state = (field) => field[property(field)];
  const firstState = (field) => ({ checked: field.defaultChecked, open: false, value: field.defaultValue })[property(field)];
  const put = (field, value) => (field[property(field)] = value);

  // What an answer has to say is said where pages say things, after the last sentence was cleared away.
  document.body.addEventListener("htmx:afterSettle", () => {
    const line = document.querySelector("main [data-say]");
    if (line) {
      line.removeAttribute("data-say");
      document.getElementById("said").replaceChildren(line);
    }
  });

  const by = document.getElementById("by");
  if (by) {
    by.value = sessionStorage.getItem("by") ?? by.value;
    by.addEventListener("change", () => sessionStorage.setItem("by", by.value));
  }
})();
