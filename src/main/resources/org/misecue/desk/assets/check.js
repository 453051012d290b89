// Single keys on the row that has the focus. Each presses what stands on the row as a button or a field.
"use strict";

(() => {
  const rows = () => [...document.querySelectorAll("article.verdict")].filter((row) => row.checkVisibility());

  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.altKey || event.metaKey || event.defaultPrevented) {
      return;
    }
    const row = event.target.closest("article.verdict");
    if (event.target.closest("input, textarea, select, video, summary") && event.key !== "Escape") {
      return;
    }
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      focus(next(row, event.key === "ArrowDown" ? 1 : -1), event);
    } else if (row) {
      act(row, event.key.toLowerCase(), event);
    }
  });

  function next(row, step, wanted = () => true) {
    const all = rows();
    let at = row ? all.indexOf(row) + step : step > 0 ? 0 : all.length - 1;
    while (all[at] && !wanted(all[at])) {
      at += step;
    }
    return all[at];
  }

  function focus(element, event) {
    if (element) {
      event.preventDefault();
      element.focus();
    }
  }

  function act(row, key, event) {
    switch (key) {
      case "j":
        return focus(next(row, 1), event);
      case "n":
        return focus(next(row, 1, (one) => one.classList.contains("open")), event);
      case "m":
        return play(row);
      case "w":
        return correct(row, event);
      case "y":
        return focus(row.querySelector("input[name=note]"), event);
      case "escape":
        return focus(row, event);
      default:
        row.querySelector(`button[data-key="${CSS.escape(key)}"]`)?.click();
    }
  }

  // Each press the next of its moments.
  function play(row) {
    const moments = [...row.querySelectorAll("button.play")];
    const last = Number(row.dataset.played ?? -1);
    if (moments.length) {
      row.dataset.played = (last + 1) % moments.length;
      moments[row.dataset.played].click();
    }
  }

  function correct(row, event) {
    const details = row.querySelector(".by-ear details");
    if (details) {
      details.open = true;
      focus(details.querySelector("textarea"), event);
    }
  }

  // Rows that were just decided stay in sight until somebody chooses anew what they want to see.
  document.addEventListener("change", (event) => {
    if (event.target.name === "rows") {
      document.querySelectorAll("article.just").forEach((row) => row.classList.remove("just"));
    }
  });

  // Whoever worked on a row that is drawn anew goes on there, or where it was; also when it is drawn twice in a row.
  let place = null;

  function note(element) {
    const row = element.closest("article.verdict");
    place = row && { id: row.id, at: rows().indexOf(row) };
  }

  document.addEventListener("focusin", (event) => note(event.target));
  document.addEventListener("pointerdown", () => {
    place = null;
  });

  document.body.addEventListener("htmx:beforeSwap", () => {
    if (document.activeElement !== document.body) {
      note(document.activeElement);
    }
  });

  document.body.addEventListener("htmx:afterSettle", () => {
    const all = rows();
    if (place && all.length && document.activeElement === document.body) {
      (all.find((row) => row.id === place.id) ?? all[place.at] ?? all[0]).focus();
    }
  });

  // A link to a row may be quicker than the rows; once they are there, it leads nowhere any more.
  let awaited = rows().length === 0 && location.hash.slice(1);
  document.body.addEventListener("htmx:afterSettle", () => {
    if (awaited && rows().length > 0) {
      const row = document.getElementById(awaited);
      awaited = "";
      if (row) {
        location.replace("#" + row.id);
        row.focus();
      }
    }
  });
})();
