// The field, the moments under it, and the way from a moment to the film. htmx asks on each change and drops an answer that
// is not wanted any more. Everything that leads to a moment is a link with data-at, so that all of it works alike.
"use strict";

(() => {
  const QUIET = 600;
  const field = document.getElementById("q");
  const moments = document.getElementById("moments");
  const player = document.getElementById("player");
  let quiet;
  let playsFirst = false;
  let chooses = false;

  moments.addEventListener("htmx:beforeSwap", () => {
    chooses = moments.contains(document.activeElement);
  });

  moments.addEventListener("htmx:afterSwap", () => {
    if (chooses) {
      (first() ?? field).focus(); // whoever was quicker than the answer goes on in the new list
    }
    clearTimeout(quiet);
    quiet = setTimeout(settle, QUIET);
    if (playsFirst) {
      playFirst();
    }
  });

  // Once nobody types any more: said to whoever listens, and kept in the address.
  function settle() {
    document.getElementById("counted").textContent = moments.querySelector(".tally")?.dataset.count ?? "";
    history.replaceState(null, "", withWords(location.href));
    for (const link of document.querySelectorAll("[data-with-words]")) {
      link.href = withWords(link.href);
    }
  }

  function withWords(address) {
    const to = new URL(address, location.href);
    to.hash = "";
    if (field.value.trim()) {
      to.searchParams.set("q", field.value.trim());
    } else {
      to.searchParams.delete("q");
    }
    return to.href;
  }

  const first = () => moments.querySelector("a[data-at]");

  field.form.addEventListener("submit", (event) => {
    event.preventDefault();
    if (field.classList.contains("htmx-request")) {
      playsFirst = true;
    } else {
      playFirst();
    }
  });

  // The field is left, so that the film's keys work.
  function playFirst() {
    playsFirst = false;
    first()?.focus();
    first()?.click();
  }

  document.addEventListener("keydown", (event) => {
    if (event.key === "Escape" && event.target !== field) {
      field.focus();
      field.select();
    } else if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      const to = neighbour(event.target, event.key === "ArrowDown" ? 1 : -1);
      if (to) {
        event.preventDefault();
        to.focus();
      }
    }
  });

  function neighbour(from, step) {
    if (from === field) {
      return step > 0 ? first() : null;
    }
    const list = from.closest("#moments, #cues, .steps");
    if (!list || !from.matches("a[data-at]")) {
      return null;
    }
    const links = [...list.querySelectorAll("a[data-at]")];
    const next = links.indexOf(from) + step;
    return next < 0 && list === moments ? field : links[next];
  }

  document.addEventListener("click", (event) => {
    const moment = event.target.closest("[data-at]");
    const elsewhere = !player || !moment || (moment.dataset.of ?? player.dataset.of) !== player.dataset.of;
    if (elsewhere || event.ctrlKey || event.metaKey || event.shiftKey) {
      return;
    }
    event.preventDefault();
    if (moment.href) {
      history.pushState(null, "", withWords(moment.href));
    }
    go(moment.dataset.at, moment.hash === "#play");
  });

  function go(at, plays) {
    player?.dispatchEvent(new CustomEvent("go", { detail: { at: Number(at), plays } }));
  }

  function arrive(plays) {
    const at = new URL(location.href).searchParams.get("t");
    if (at) {
      go(at, plays);
    }
  }

  addEventListener("popstate", () => {
    field.value = new URL(location.href).searchParams.get("q") ?? "";
    htmx.trigger(field, "ask");
    arrive(false);
  });

  addEventListener("DOMContentLoaded", () => {
    arrive(location.hash === "#play");
    history.replaceState(null, "", withWords(location.href));
    if (!location.search.includes("t=")) {
      field.focus();
    }
  });
})();
