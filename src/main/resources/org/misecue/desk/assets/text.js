// Copies a text and says so.
"use strict";

(() => {
  document.addEventListener("click", async (event) => {
    const button = event.target.closest("button[data-copy]");
    if (!button) {
      return;
    }
    const text = document.getElementById(button.dataset.copy);
    const copied = (await byClipboard(text.textContent)) || bySelection(text);
    const line = document.createElement("p");
    line.className = copied ? "sentence fine" : "sentence";
    line.textContent = copied ? "Copied." : "This browser does not let pages copy; the text is selected, copy it with its own command.";
    document.getElementById("said").replaceChildren(line);
  });

  async function byClipboard(text) {
    try {
      await navigator.clipboard.writeText(text);
      return true;
    } catch (refused) {
      return false;
    }
  }

  // Leaves the text selected, so that whoever has to can copy by hand.
  function bySelection(text) {
    getSelection().selectAllChildren(text);
    return document.execCommand("copy");
  }
})();
