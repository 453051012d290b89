// Counts the timers down and rings on this device. What runs stands in the page; the desk's clock counts, not this device's.
"use strict";

(() => {
  const RING_EVERY = 3000;
  const title = document.title;
  let ahead = 0; // how far this device's clock is before the desk's
  let sound = null;
  let lastRing = 0;

  function board() {
    return document.getElementById("timers");
  }

  function setClock() {
    if (board()) {
      ahead = Date.now() - Number(board().dataset.clock);
    }
    count();
  }

  function count() {
    const now = Date.now() - ahead;
    const up = [];
    for (const timer of document.querySelectorAll("#timers [data-ends]")) {
      const left = Number(timer.dataset.ends) - now;
      write(timer, clock(Math.max(0, Math.ceil(left / 1000))));
      timer.closest(".timer").classList.toggle("rings", left <= 0);
      if (left <= 0) {
        up.push(timer.dataset.what);
      }
    }
    tell(up);
    if (up.length > 0 && Date.now() - lastRing >= RING_EVERY) {
      lastRing = Date.now();
      ring();
    }
  }

  function clock(seconds) {
    const two = (number) => String(number).padStart(2, "0");
    const hours = Math.floor(seconds / 3600);
    const minutes = Math.floor(seconds / 60) % 60;
    return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds % 60)}` : `${minutes}:${two(seconds % 60)}`;
  }

  function write(element, text) {
    if (element.textContent !== text) {
      element.textContent = text;
    }
  }

  // Read out once: the lines are only touched when others ring.
  function tell(up) {
    const alarm = document.getElementById("alarm");
    const lines = up.map((what) => "Time is up: " + what);
    if (alarm && [...alarm.children].map((line) => line.textContent).join("\n") !== lines.join("\n")) {
      alarm.replaceChildren(...lines.map((text) => {
        const line = document.createElement("p");
        line.textContent = text;
        return line;
      }));
    }
    document.title = up.length > 0 ? "Time is up – " + title : title;
  }

  function ring() {
    if (navigator.vibrate && navigator.userActivation?.hasBeenActive) {
      navigator.vibrate([300, 150, 300]);
    }
    if (!sound || sound.state !== "running") {
      return;
    }
    for (const after of [0, 0.3, 0.6]) {
      const tone = sound.createOscillator();
      const loud = sound.createGain();
      const at = sound.currentTime + after;
      tone.frequency.value = 1046; // c''', above the noise of a mixer
      loud.gain.setValueAtTime(0.4, at);
      loud.gain.exponentialRampToValueAtTime(0.001, at + 0.25);
      tone.connect(loud).connect(sound.destination);
      tone.start(at);
      tone.stop(at + 0.25);
    }
  }

  // Browsers let a page sound only once somebody touched it.
  function wake() {
    if (!sound && window.AudioContext) {
      sound = new AudioContext();
      sound.onstatechange = saySound;
    }
    sound?.resume().then(saySound);
  }

  function saySound() {
    const line = document.getElementById("sound");
    if (line) {
      write(line, sound?.state === "running"
        ? "Timers ring on this device."
        : "Timers ring on this device only after you touch the page once.");
    }
  }

  for (const touch of ["pointerup", "keydown"]) {
    document.addEventListener(touch, wake, true);
  }
  document.body.addEventListener("steady", setClock);
  setClock();
  saySound();
  setInterval(count, 250);
})();
