// A way for htmx to put a newer piece in place of an older one: hx-ext="steady" hx-swap="steady". Only what differs is
// touched, so that focus, scrolling and what was folded open stay; and nothing moves while a finger is down on the page.
"use strict";

(() => {
  let held = null;
  let down = false;

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
      htmx.process(old);
    }
  }

  function put(old, fresh) {
    const focused = document.activeElement;
    const before = buttons(old);
    const place = before.indexOf(focused);
    become(old, fresh);
    if (place >= 0 && !document.contains(focused)) {
      // What was touched is gone from the list: the next one takes its place.
      const now = buttons(old);
      const next = now[Math.min(place, now.length - 1)];
      (next || old.querySelector("a, button"))?.focus();
    }
    document.body.dispatchEvent(new CustomEvent("steady"));
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
            const gone = at;
            at = at.nextSibling;
            gone.remove();
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
      const gone = at;
      at = at.nextSibling;
      gone.remove();
    }
  }

  // Whether this one is wanted further on in the fresh list.
  function comesLater(node, wanted) {
    for (let next = wanted.nextSibling; next; next = next.nextSibling) {
      if (node.id && next.id === node.id) {
        return true;
      }
    }
    return false;
  }

  function fits(node, wanted) {
    return node && node.nodeType === wanted.nodeType && node.nodeName === wanted.nodeName
      && (node.id || "") === (wanted.id || "");
  }

  function named(parent, wanted) {
    return wanted.id ? [...parent.children].find((child) => fits(child, wanted)) : undefined;
  }

  htmx.defineExtension("steady", {
    handleSwap(style, target, fragment) {
      if (style !== "steady") {
        return false;
      }
      const fresh = fragment.firstElementChild;
      if (down) {
        held = { old: target, fresh };
        return [];
      }
      held = null;
      put(target, fresh);
      return [target];
    },
  });
})();
