// Follows the files: asks now and then whether something changed, and tells the page by an event on its body.
// Pieces that want to follow say hx-trigger="state-changed from:body", or inputs-changed for the files themselves.
"use strict";

(() => {
  const EVERY = 1000;
  const body = document.body;
  if (!body.dataset.pulse) {
    return;
  }
  let lost = false;

  async function ask() {
    if (!document.hidden) {
      try {
        const answer = await fetch(body.dataset.pulse, { cache: "no-store" });
        if (answer.ok) {
          tell(await answer.json());
        }
        lost = false;
      } catch (gone) {
        if (!lost) {
          say("The desk is closed, or this device lost it. What was confirmed is kept; the page goes on when it is back.");
        }
        lost = true;
      }
    }
    setTimeout(ask, EVERY);
  }

  function tell(now) {
    document.getElementById("doing").textContent = now.doing ? now.doing + " …" : "";
    for (const what of ["inputs", "state"]) {
      if (now[what] !== body.dataset[what]) {
        body.dataset[what] = now[what];
        body.dispatchEvent(new CustomEvent(what + "-changed"));
      }
    }
  }

  function say(sentence) {
    const line = document.createElement("p");
    line.className = "sentence";
    line.textContent = sentence;
    document.getElementById("said").replaceChildren(line);
  }

  // A sentence stays until the next thing succeeds, and gives way before what that has to say.
  body.addEventListener("htmx:beforeOnLoad", (event) => {
    if (event.detail.xhr.status < 400 && event.detail.requestConfig.verb !== "get") {
      document.getElementById("said").replaceChildren();
    }
  });
  body.addEventListener("htmx:sendError", () => say("The desk does not answer; nothing was changed. Is it still open?"));

  setTimeout(ask, EVERY);
})();
