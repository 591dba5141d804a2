// Buttons that copy what an element holds. Without scripts they stay hidden, and what they would copy can be marked by hand.
"use strict";
(() => {
  const mark = (held) => {
    if (held instanceof HTMLInputElement) {
      held.focus();
      held.select();
    } else {
      getSelection().selectAllChildren(held);
    }
  };
  // A page that comes without TLS from another machine is given no clipboard: what is marked is copied the older way.
  const copied = async (held) => {
    const text = held instanceof HTMLInputElement ? held.value : held.textContent;
    try {
      await navigator.clipboard.writeText(text);
      return true;
    } catch {
      mark(held);
      return document.execCommand("copy");
    }
  };
  for (const copy of document.querySelectorAll("[data-copies]")) {
    const button = copy.querySelector("button");
    const said = copy.querySelector("[role=status]");
    button.addEventListener("click", async () => {
      said.textContent = "";
      const done = await copied(document.getElementById(copy.dataset.copies));
      button.focus();
      // Said anew each time, so that whoever listens hears it again.
      setTimeout(() => (said.textContent = done ? said.dataset.done : said.dataset.failed), 100);
    });
    copy.hidden = false;
  }
})();
