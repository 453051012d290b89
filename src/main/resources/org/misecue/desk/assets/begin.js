// Sends files as they are, each as the body of a request of its own, so that the desk can write them straight to the disk.
// Every file is looked at first: what would be refused in the end is not sent at all.
"use strict";

(() => {
  const form = document.querySelector("form.begin");
  if (!form) {
    return;
  }
  const HEAD = 65536;
  const AT_ONCE = 2;
  const begins = form.dataset.recipe !== undefined;
  const input = form.querySelector("input[type=file]");
  const list = form.querySelector(".coming");
  const told = form.querySelector(".told");
  const make = form.querySelector("button.first");
  const kinds = { RECIPE: "recipe", NARRATION: "narration", FILM: "film" };
  const rows = new Set();
  let filesAddress = form.dataset.files;
  let next = "";

  class Row {
    constructor(file) {
      this.file = file;
      this.name = file.name.replace(/[\ud800-\udfff]/gu, "");
      this.state = "looked at";
      this.item = document.createElement("li");
      this.title = this.add("strong", this.name);
      this.what = this.add("span", size(file.size), "quiet");
      this.bar = this.add("progress", "");
      this.bar.max = Math.max(1, file.size);
      this.bar.value = 0;
      this.bar.hidden = true;
      this.how = this.add("span", "", "how");
      this.rename = this.button("", () => this.underAnotherName());
      this.rename.hidden = true;
      this.stop = this.button("Take away", () => this.takeAway());
      list.append(this.item);
    }

    add(tag, text, look) {
      const part = document.createElement(tag);
      part.textContent = text;
      part.className = look || "";
      this.item.append(part);
      return part;
    }

    button(text, act) {
      const part = this.add("button", text);
      part.type = "button";
      part.addEventListener("click", act);
      return part;
    }

    show(state, how) {
      this.state = state;
      this.item.className = state;
      this.how.textContent = how;
      this.title.textContent = this.name;
      this.what.textContent = (this.kind ? kinds[this.kind] + ", " : "") + size(this.file.size)
        + (this.name === this.file.name ? "" : ", chosen as " + this.file.name);
      this.bar.setAttribute("aria-label", "How much of " + this.name + " is sent");
      this.bar.hidden = state !== "sent";
      this.rename.hidden = !this.taken;
      this.rename.textContent = this.taken ? "Add as " + another(this.name) : "";
      this.stop.hidden = state === "kept";
      this.stop.textContent = state === "sent" ? "Stop" : "Take away";
      this.stop.setAttribute("aria-label", this.stop.textContent + " " + this.name);
    }

    async look() {
      this.taken = false;
      this.show("looked at", "…");
      try {
        const address = form.dataset.look + "?name=" + encodeURIComponent(this.name) + "&size=" + this.file.size;
        const head = await this.file.slice(0, HEAD).arrayBuffer();
        const answer = await fetch(address, { method: "POST", body: head, headers: { "HX-Request": "true" } });
        if (!answer.ok) {
          this.refused(sentence(await answer.text()));
          return;
        }
        const said = await answer.json();
        this.kind = said.kind;
        this.name = said.name || this.name;
        this.taken = said.taken === "yes" || twin(this);
        if (said.sentence) {
          this.refused(said.sentence);
        } else if (this.taken) {
          this.refused("Another file here has this name; add this one under another, or take one away.");
        } else {
          this.show("ready", begins ? "" : "waits");
        }
      } catch (unreadable) {
        this.refused("This cannot be read; of a folder, drop what is in it.");
      }
    }

    refused(why) {
      const short = why.startsWith(this.name + ": ") ? why.slice(this.name.length + 2) : why;
      this.show("refused", short);
      tell(this.name + ": " + short);
    }

    underAnotherName() {
      this.name = another(this.name);
      this.look().then(go);
    }

    takeAway() {
      if (this.state === "sent") {
        this.request.abort();
        return;
      }
      rows.delete(this);
      this.item.remove();
      input.focus();
      go();
    }

    send(method, address) {
      return new Promise((done) => {
        const request = new XMLHttpRequest();
        this.request = request;
        this.show("sent", "starts");
        const began = Date.now();
        request.open(method, address + "?name=" + encodeURIComponent(this.name));
        request.setRequestHeader("HX-Request", "true");
        request.setRequestHeader("Content-Type", "application/octet-stream");
        request.upload.addEventListener("progress", (event) => this.progress(event.loaded, Date.now() - began));
        request.addEventListener("load", () => {
          const fine = request.status < 300;
          if (fine) {
            this.show("kept", "added");
            tell(this.name + " was added.");
          } else {
            this.taken = request.status === 409;
            this.refused(sentence(request.responseText));
          }
          done(fine ? JSON.parse(request.responseText) : undefined);
        });
        request.addEventListener("error", () => {
          this.refused("This broke off on its way, and nothing of it was kept; is the desk still open?");
          done();
        });
        request.addEventListener("abort", () => {
          this.refused("Stopped; nothing of it was kept.");
          done();
        });
        request.send(this.file);
      });
    }

    progress(bytes, millis) {
      this.bar.value = bytes;
      const all = this.file.size;
      const left = (all - bytes) * millis / Math.max(1, bytes) / 1000;
      this.how.textContent = bytes >= all ? "is being looked at …"
        : size(bytes) + " of " + size(all) + (millis > 1000 ? ", " + time(left) + " left" : "");
    }
  }

  function size(bytes) {
    const units = ["bytes", "KB", "MB", "GB", "TB"];
    let unit = 0;
    while (bytes >= 1000 && unit < 4) {
      bytes /= 1024;
      unit++;
    }
    return (bytes < 10 && unit > 1 ? bytes.toFixed(1) : Math.round(bytes)) + " " + (bytes === 1 && unit === 0 ? "byte" : units[unit]);
  }

  function time(seconds) {
    return seconds < 90 ? Math.ceil(seconds) + " s" : Math.ceil(seconds / 60) + " min";
  }

  function another(name) {
    const dot = name.lastIndexOf(".");
    const stem = dot > 0 ? name.slice(0, dot) : name;
    const numbered = /^(.*)-(\d{1,3})$/.exec(stem);
    const next = numbered ? numbered[1] + "-" + (Number(numbered[2]) + 1) : stem + "-2";
    return next + (dot > 0 ? name.slice(dot) : "");
  }

  function twin(row) {
    return [...rows].some((other) => other !== row && other.kind === row.kind && !["refused", "kept"].includes(other.state)
      && other.name.toLowerCase() === row.name.toLowerCase());
  }

  function sentence(page) {
    const line = new DOMParser().parseFromString(page, "text/html").querySelector(".sentence");
    return line ? line.textContent : "The desk did not take it; load the page again.";
  }

  function tell(words) {
    told.textContent = words;
  }

  const of = (kind, ...states) => [...rows].filter((row) => row.kind === kind && states.includes(row.state));
  const are = (...states) => [...rows].filter((row) => states.includes(row.state));

  async function choose(files) {
    const added = [...files].map((file) => new Row(file));
    for (const row of added) {
      rows.add(row);
      await row.look();
    }
    go();
  }

  // What can be done now: on the page of an episode files go at once, a new one waits for its button.
  function go() {
    if (filesAddress !== undefined) {
      pass();
    } else if (make) {
      const recipes = of("RECIPE", "ready").length;
      make.disabled = recipes !== 1 || are("looked at", "sent").length > 0;
      if (recipes > 1) {
        tell("An episode has one recipe; take the others away.");
      } else if (rows.size > 0 && recipes === 0 && are("looked at", "refused").length === 0) {
        tell("An episode begins with its recipe; add that too.");
      } else if (!make.disabled) {
        tell("Ready: " + of("RECIPE", "ready")[0].name + " is the recipe.");
      }
    }
  }

  function pass() {
    for (const row of are("ready").slice(0, AT_ONCE - are("sent").length)) {
      row.send("PUT", filesAddress).then(go);
    }
    if (begins && are("ready", "sent", "looked at").length === 0) {
      arrive();
    }
  }

  async function begin() {
    make.disabled = true;
    const made = await of("RECIPE", "ready")[0].send("POST", form.dataset.recipe);
    if (!made) {
      return;
    }
    next = made.next;
    filesAddress = made.files;
    form.dataset.look = made.files + "/look";
    go();
  }

  // Whoever has to read why a film was not taken goes on by hand.
  function arrive() {
    if (are("refused").length === 0) {
      location.assign(next);
      return;
    }
    const on = document.createElement("a");
    on.className = "button";
    on.href = next;
    on.textContent = "Go on with what was added";
    make.replaceWith(on);
    on.focus();
  }

  input.addEventListener("change", () => {
    choose(input.files);
    input.value = "";
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    begin();
  });
  for (const name of ["dragenter", "dragover"]) {
    window.addEventListener(name, (event) => {
      event.preventDefault();
      form.classList.add("over");
    });
  }
  window.addEventListener("dragleave", (event) => {
    if (!event.relatedTarget) {
      form.classList.remove("over");
    }
  });
  window.addEventListener("drop", (event) => {
    event.preventDefault();
    form.classList.remove("over");
    choose(event.dataTransfer.files);
  });
  window.addEventListener("beforeunload", (event) => {
    if (are("sent").length > 0) {
      event.preventDefault();
    }
  });
})();
