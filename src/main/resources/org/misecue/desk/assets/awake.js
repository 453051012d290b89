// Keeps the screen on while this page is looked at, where the browser lets a page do so, and says which it is.
"use strict";

(() => {
  const line = document.getElementById("awake");

  async function stay() {
    if (document.hidden) {
      return;
    }
    try {
      const lock = await navigator.wakeLock.request("screen");
      line.textContent = "The screen stays on while this page is open.";
      lock.addEventListener("release", () => say());
    } catch (refused) {
      say();
    }
  }

  function say() {
    line.textContent = "The screen may go dark: this browser does not let the page keep it on; the device’s settings can.";
  }

  document.addEventListener("visibilitychange", stay);
  stay();
})();
