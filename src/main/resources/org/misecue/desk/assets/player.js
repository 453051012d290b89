// The film, its keys and marks, and the text that follows it. Without a film only the text follows.
"use strict";

(() => {
  const by = (id) => document.getElementById(id);
  const player = by("player");
  if (!player) {
    return;
  }
  const film = by("film");
  const place = by("place");
  const { frames, seconds, starts, drops } = player.dataset;
  const rate = frames ? frames / seconds : 25;
  const length = Number(player.dataset.length);
  const cues = follower("#cues a[data-at]");
  const steps = follower(".steps > li > a");
  const mark = { in: null, out: null };
  let reader = 0;

  // Moving

  const now = () => (film ? film.currentTime : reader);
  const frame = () => Math.floor(now() * rate + 0.001);

  function go(at) {
    reader = Math.min(Math.max(at, 0), length);
    if (film) {
      film.currentTime = reader + 0.001; // browsers count in binary fractions, and may show the frame before
    }
    follow();
  }

  function step(by) {
    film.pause();
    go((frame() + by) / rate);
  }

  const play = () => film?.play().catch(() => follow());

  player.addEventListener("go", (event) => {
    go(event.detail.at);
    if (event.detail.plays) {
      play();
      (film ?? cues.now)?.scrollIntoView({ block: "nearest" });
    }
  });

  place.addEventListener("input", () => go(Number(place.value)));

  // Following

  function follow() {
    const at = now();
    place.value = at;
    place.setAttribute("aria-valuetext", clock(at));
    const share = `${(100 * at) / length}%`;
    by("needle").setAttribute("x1", share);
    by("needle").setAttribute("x2", share);
    by("code").textContent = frames ? label(frame(), false) : clock(at);
    by("camera").textContent = starts ? "camera " + label(Number(starts) + frame(), drops !== undefined) : "";
    steps.follow(at);
    by("step").textContent = steps.now?.querySelector("b").textContent ?? "";
    cues.follow(at);
    lookAcross(at);
  }

  // The same moment on the clocks of the films that ran meanwhile, as footage.Offset tells it.
  function lookAcross(at) {
    let runs = null;
    for (const link of document.querySelectorAll("#cameras a")) {
      const there = Number(link.dataset.zero) + at * Number(link.dataset.pace);
      const on = there >= 0 && there < Number(link.dataset.length);
      const to = new URL(link.href);
      on ? to.searchParams.set("t", there.toFixed(3)) : to.searchParams.delete("t");
      const words = by("q")?.value.trim();
      words ? to.searchParams.set("q", words) : to.searchParams.delete("q");
      link.href = to.href;
      link.querySelector(".code").textContent = on ? clock(there) : "did not run";
      runs ??= on ? link : null;
    }
    if (by("other")) {
      by("other").hidden = !runs;
    }
    return runs;
  }

  document.addEventListener("htmx:afterSettle", () => lookAcross(now()));

  function follower(links) {
    const all = [...document.querySelectorAll(links)];
    const times = all.map((link) => Number(link.dataset.at));
    const list = all[0]?.closest("ol");
    let letBe = 0;
    for (const scrolled of ["wheel", "touchmove"]) {
      list?.addEventListener(scrolled, () => (letBe = Date.now() + 4000), { passive: true });
    }

    // One stop for Tab; arrows go from one to the next.
    function stopAt(stop) {
      list?.querySelectorAll("a").forEach((link) => (link.tabIndex = link === stop ? 0 : -1));
    }

    stopAt(all[0]);
    return {
      now: null,
      follow(at) {
        const on = all[times.findLastIndex((time) => time <= at + 0.001)] ?? null;
        if (on === this.now) {
          return;
        }
        this.now?.removeAttribute("aria-current");
        on?.setAttribute("aria-current", "true");
        this.now = on;
        stopAt(on ?? all[0]);
        if (on && Date.now() > letBe) {
          list.scrollTop = on.offsetTop - list.clientHeight / 3;
        }
      },
    };
  }

  function clock(at) {
    const whole = Math.floor(at);
    const two = (part) => String(part).padStart(2, "0");
    const hours = Math.floor(whole / 3600);
    const minutes = Math.floor(whole / 60) % 60;
    return (hours ? `${hours}:${two(minutes)}` : minutes) + ":" + two(whole % 60);
  }

  // As footage.Timecode does it, after SMPTE ST 12.
  function label(number, dropping) {
    const counted = Math.round(rate);
    const dropped = dropping ? counted / 15 : 0;
    const ten = counted * 600 - dropped * 9;
    let left = number % (ten * 144);
    const inTen = left % ten;
    const minutes = inTen < counted * 60 ? 0 : Math.floor((inTen - dropped) / (counted * 60 - dropped));
    left += dropped * (Math.floor(left / ten) * 9 + minutes);
    const all = Math.floor(left / counted);
    const parts = [Math.floor(all / 3600), Math.floor(all / 60) % 60, all % 60, left % counted];
    const [h, m, s, f] = parts.map((part) => String(part).padStart(2, "0"));
    return `${h}:${m}:${s}${dropping ? ";" : ":"}${f}`;
  }

  // Marking and taking

  const tell = (sentence) => (by("told").textContent = sentence);
  const words = (number) => label(number, false);

  function marked(which) {
    mark[which] = frame();
    const other = which === "in" ? "out" : "in";
    if (mark.in !== null && mark.out !== null && mark.out < mark.in) {
      mark[other] = null;
    }
    const both = mark.in !== null && mark.out !== null;
    const share = (number) => `${(100 * number) / rate / length}%`;
    by("between").setAttribute("x", both ? share(mark.in) : 0);
    by("between").setAttribute("width", both ? share(mark.out + 1 - mark.in) : 0);
    by("marks").textContent = [
      mark.in === null ? "" : "In " + words(mark.in),
      mark.out === null ? "" : "Out " + words(mark.out),
      both ? ((mark.out + 1 - mark.in) / rate).toFixed(1) + "\u00a0s" : "",
    ]
      .filter(Boolean)
      .join(" · ");
    tell(`Mark ${which} at ${words(mark[which])}.`);
  }

  // Thousandths of a second, within the frame.
  const begins = (number) => Math.ceil((1000 * number) / rate - 0.000001) / 1000;
  const ends = (number) => Math.floor((1000 * (number + 1)) / rate + 0.000001) / 1000;

  const still = () => take("still", { at: begins(frame()) }, "Still");

  function clip() {
    if (mark.in === null || mark.out === null) {
      tell("Mark in and mark out first; the clip goes from the one to the other.");
      return;
    }
    tell("Cutting the clip …");
    take("clip", { from: begins(mark.in), to: ends(mark.out) }, "Clip");
  }

  async function take(what, where, name) {
    try {
      const answer = await send("POST", what, where);
      const made = await answer.json();
      const link = document.createElement("a");
      link.href = made.src;
      link.textContent = made.file;
      const line = document.createElement("li");
      if (what === "still") {
        const picture = document.createElement("img");
        picture.src = made.src;
        picture.alt = "";
        line.append(picture);
      }
      line.append(link);
      by("taken").prepend(line);
      tell(`${name} kept as ${made.file}.`);
    } catch (wrong) {
      tell(wrong.message);
    }
  }

  async function send(method, what, values) {
    const answer = await fetch(`${film.dataset.media}/${what}`, {
      method,
      body: values && new URLSearchParams(values),
      headers: { "HX-Request": "true" }, // what is wrong comes as one sentence
    });
    if (!answer.ok) {
      const said = new DOMParser().parseFromString(await answer.text(), "text/html");
      throw new Error(said.body.textContent.trim());
    }
    return answer;
  }

  // A film that browsers cannot play

  async function load(method, what) {
    try {
      show(await (await send(method, what)).json());
    } catch (wrong) {
      show({ src: null, why: wrong.message, making: null, wrong: "" });
    }
  }

  function show(state) {
    by("unplayable").hidden = state.src !== null;
    by("why").textContent = state.wrong || state.why;
    by("making").hidden = state.making === null;
    by("making").value = state.making ?? 0;
    button("proxy").hidden = state.making !== null;
    button("stop").hidden = state.making === null;
    if (state.src && film.getAttribute("src") !== state.src) {
      film.src = state.src;
      film.currentTime = reader + 0.001;
    }
    if (state.making !== null) {
      setTimeout(() => load("GET", "state"), 1000);
    }
  }

  const button = (key) => player.querySelector(`[data-key=${key}]`);

  async function copy() {
    const code = (by("camera").textContent || by("code").textContent).replace("camera ", "");
    try {
      await navigator.clipboard.writeText(code);
      tell(`Copied ${code}.`);
    } catch (refused) {
      tell(`The browser does not let pages copy; the time code is ${code}.`);
    }
  }

  const doing = {
    p: () => (film.paused ? play() : film.pause()),
    e: () => go(now() - 5),
    l: () => go(now() + 5),
    b: () => step(-1),
    n: () => step(1),
    f: () => marked("in"),
    t: () => marked("out"),
    c: copy,
    o: () => lookAcross(now())?.click(),
    s: still,
    x: clip,
    proxy: () => load("POST", "proxy"),
    stop: () => load("DELETE", "proxy"),
  };

  player.addEventListener("click", (event) => doing[event.target.closest("[data-key]")?.dataset.key]?.());

  document.addEventListener("keydown", (event) => {
    const types = event.target.matches("input:not([type=range], [type=checkbox]), textarea, select");
    const alone = !event.ctrlKey && !event.metaKey && !event.altKey && event.key.length === 1;
    if (film && !types && alone && by("keys").checked) {
      doing[event.key.toLowerCase()]?.();
    }
  });

  if (film) {
    for (const moved of ["timeupdate", "seeking", "seeked", "loadedmetadata"]) {
      film.addEventListener(moved, follow);
    }
    for (const changed of ["play", "pause"]) {
      film.addEventListener(changed, () => (by("play").textContent = film.paused ? "Play" : "Pause"));
    }
    film.addEventListener("error", () =>
      show({ src: null, why: "This browser cannot play the film as the camera wrote it.", making: null, wrong: "" }),
    );
    load("GET", "state");
    film.addEventListener("click", doing.p);
    const tick = () => {
      follow();
      film.requestVideoFrameCallback?.(tick);
    };
    tick();
  }
  follow();
})();
