// Plays moments, and lets single keys decide on the row that has the focus. Everything here is a button on the page too.
"use strict";

(() => {
  const BEFORE = 2;
  const AFTER = 6;
  const film = document.getElementById("film");
  const place = film.closest("aside");
  const says = document.getElementById("film-says");
  let until = Infinity;

  document.addEventListener("click", (event) => {
    const button = event.target.closest("button.play");
    if (button) {
      play(button.dataset.film, Number(button.dataset.at));
    }
  });

  async function play(address, at) {
    place.hidden = false;
    until = at + AFTER;
    const src = await playable(address);
    if (!src) {
      return;
    }
    if (film.dataset.src !== src) {
      film.dataset.src = src;
      film.src = src;
    }
    film.currentTime = Math.max(0, at - BEFORE);
    film.play().catch(() => tell("Press play in the picture; this browser does not begin by itself."));
  }

  film.addEventListener("timeupdate", () => {
    if (film.currentTime >= until) {
      film.pause();
      until = Infinity;
    }
  });

  // The camera's own file where the browser can play it, else a smaller copy, which is made now.
  async function playable(address) {
    tell("");
    let state = await json(address + "/state");
    if (state && !state.src && !state.wrong) {
      state = await json(address + "/proxy", { method: "POST" });
    }
    while (state && !state.src && !state.wrong) {
      tell(`A copy that this browser can play is being made: ${state.making ?? 0} %`);
      await new Promise((done) => setTimeout(done, 700));
      state = await json(address + "/state");
    }
    tell(state ? state.wrong : "This film cannot be played here.");
    return state?.src;
  }

  async function json(address, how) {
    const answer = await fetch(address, how);
    return answer.ok ? answer.json() : null;
  }

  function tell(sentence) {
    says.textContent = sentence ?? "";
  }

  document.addEventListener("keydown", (event) => {
    const row = event.target.closest("article.verdict");
    const typing = event.target.closest("input, textarea, select, video");
    if (typing || event.ctrlKey || event.altKey || event.metaKey) {
      return;
    }
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      move(row, event.key === "ArrowDown" ? 1 : -1, event);
    } else if (row) {
      act(row, event.key.toLowerCase(), event);
    }
  });

  function move(row, step, event) {
    const rows = [...document.querySelectorAll("article.verdict")].filter((one) => one.offsetParent);
    const next = row ? rows[rows.indexOf(row) + step] : rows[step > 0 ? 0 : -1];
    if (next) {
      event.preventDefault();
      next.focus();
    }
  }

  function act(row, key, event) {
    if (key === "m") {
      row.querySelector("button.play")?.click();
    } else if (key === "w") {
      const words = row.querySelector("details.by-ear");
      if (words) {
        event.preventDefault();
        words.open = true;
        words.querySelector("input[name=heard]").focus();
      }
    } else {
      row.querySelector(`button[data-key="${CSS.escape(key)}"]`)?.click();
    }
  }

  // Whoever decides types their name once a session.
  const by = document.getElementById("by");
  by.value = sessionStorage.getItem("by") ?? by.value;
  by.addEventListener("change", () => sessionStorage.setItem("by", by.value));
})();
