// Puts a newer piece in place of an older one, for pieces that carry data-turn. Only what differs is touched, so that focus,
// scrolling and what was folded open stay; and nothing moves while a finger is down on the page. By data-turn an older piece
// is known that was overtaken on its way; data-answer says that it answers a touch, and what says data-stays is left until
// then; data-address is what to load for the same again. Whatever may come and go between others needs an id.
"use strict";

(() => {
  let held = null;
  let down = false;
  let answers = false;

  for (const [name, is] of [["pointerdown", true], ["pointerup", false], ["pointercancel", false]]) {
    document.addEventListener(name, () => {
      down = is;
      // The click of this touch comes first.
      setTimeout(letGo, 0);
    }, true);
  }

  function letGo() {
    if (held && !down) {
      const { old, fresh } = held;
      held = null;
      put(old, fresh);
    }
  }

  function put(old, fresh) {
    const overtaken = Number(fresh.dataset.turn) < Number(old.dataset.turn);
    answers = fresh.dataset.answer !== undefined;
    if (overtaken && !answers) {
      return;
    }
    const focused = document.activeElement;
    const before = buttons(old);
    const place = before.indexOf(focused);
    const homes = around(focused);
    become(old, fresh);
    if (homes.length > 0 && !document.contains(focused)) {
      // What was touched is gone from the list: the next one takes its place, or what stands beside it.
      const now = buttons(old);
      const home = homes.map((one) => document.getElementById(one)).find((one) => one?.querySelector("button, a"));
      (now[place < 0 ? -1 : Math.min(place, now.length - 1)] || home?.querySelector("button, a"))?.focus();
    }
    htmx.process(old);
    history.replaceState(history.state, "", fresh.dataset.address);
    document.body.dispatchEvent(new CustomEvent("steady"));
    if (overtaken) {
      document.body.dispatchEvent(new CustomEvent("state-changed"));
    }
  }

  // The places of the page that an element stands in, the nearest first.
  function around(element) {
    const homes = [];
    for (let one = element.parentElement; one && one.id !== "main"; one = one.parentElement) {
      if (id(one)) {
        homes.push(id(one));
      }
    }
    return homes;
  }

  function buttons(piece) {
    return [...piece.querySelectorAll("button.tick")];
  }

  function become(old, fresh) {
    if (old.nodeType !== Node.ELEMENT_NODE) {
      if (old.data !== fresh.data) {
        old.data = fresh.data;
      }
      return;
    }
    for (const { name, value } of [...fresh.attributes]) {
      if (old.getAttribute(name) !== value) {
        old.setAttribute(name, value);
      }
    }
    for (const { name } of [...old.attributes]) {
      const own = name === "open" && old.localName === "details";
      if (!fresh.hasAttribute(name) && !own) {
        old.removeAttribute(name);
      }
    }
    children(old, fresh);
  }

  function children(old, fresh) {
    let at = old.firstChild;
    for (const wanted of [...fresh.childNodes]) {
      const known = fits(at, wanted) ? at : named(old, wanted);
      if (known) {
        if (known === at) {
          at = at.nextSibling;
        } else {
          // Those before it are gone; moving it instead would take its focus.
          while (at !== known && at && !comesLater(at, wanted)) {
            at = drop(at);
          }
          if (at === known) {
            at = at.nextSibling;
          } else {
            old.insertBefore(known, at);
          }
        }
        become(known, wanted);
      } else {
        old.insertBefore(wanted, at);
      }
    }
    while (at) {
      at = drop(at);
    }
  }

  function drop(node) {
    const next = node.nextSibling;
    if (answers || node.dataset?.stays === undefined) {
      node.remove();
    }
    return next;
  }

  // Whether this one is wanted further on in the fresh list.
  function comesLater(node, wanted) {
    for (let next = wanted.nextSibling; next; next = next.nextSibling) {
      if (id(node) && id(next) === id(node)) {
        return true;
      }
    }
    return false;
  }

  function fits(node, wanted) {
    return node && node.nodeType === wanted.nodeType && node.nodeName === wanted.nodeName
      && id(node) === id(wanted);
  }

  // Not node.id: that of a form would be its field called “id”.
  function id(node) {
    return (node.getAttribute && node.getAttribute("id")) || "";
  }

  function named(parent, wanted) {
    return id(wanted) ? [...parent.children].find((child) => fits(child, wanted)) : undefined;
  }

  // Not as a way of swapping of htmx’s own: it would be looked for around what was touched, which may be gone by now.
  document.body.addEventListener("htmx:beforeSwap", (event) => {
    const old = event.detail.target;
    if (old.dataset.turn === undefined) {
      return;
    }
    event.detail.shouldSwap = false;
    const page = new DOMParser().parseFromString(event.detail.serverResponse, "text/html");
    const fresh = document.importNode(page.getElementById(old.id), true);
    if (down) {
      held = { old, fresh };
    } else {
      held = null;
      put(old, fresh);
    }
  });
})();
