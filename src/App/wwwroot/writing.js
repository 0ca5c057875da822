// A practical in writing. An answer writes the file anew until the file is changed by hand; every change of the file is looked at,
// and what is found stands at its line. What is on its way when more is typed is given up.
"use strict";
(() => {
  const form = document.getElementById("writing");
  const text = document.getElementById("text");
  const seen = document.getElementById("seen");
  const said = document.getElementById("writing-said");
  const lines = form?.querySelector(".lines");
  if (!form || !text || !seen) return;
  const pause = 500;
  let written = form.dataset.hand ? null : text.value, saved = text.value, waiting = 0, asked = null;

  const say = words => { if (said.textContent !== words) said.textContent = words; };
  const byHand = () => text.value !== written;

  function number() {
    const wrong = new Set([...seen.querySelectorAll("li[data-line]")].map(l => Number(l.dataset.line)));
    const count = text.value.split("\n").length;
    lines.replaceChildren();
    for (let line = 1; line <= count; line++) {
      const mark = document.createElement(wrong.has(line) ? "b" : "span");
      mark.textContent = `${wrong.has(line) ? "▸" : ""}${line}\n`;
      lines.append(mark);
    }
    lines.scrollTop = text.scrollTop;
  }

  async function send(address, fields, busy) {
    asked?.abort();
    asked = new AbortController();
    const { signal } = asked;
    seen.parentElement.setAttribute("aria-busy", "true");
    say(busy);
    try {
      const answer = await fetch(address, { method: "POST", body: fields, headers: { Accept: "text/html" }, signal });
      if (!answer.ok) throw new Error(answer.status);
      const body = new DOMParser().parseFromString(await answer.text(), "text/html").body;
      seen.parentElement.removeAttribute("aria-busy");
      return body;
    } catch (trouble) {
      if (trouble.name !== "AbortError") {
        say("The program does not answer. What you wrote is still here.");
        seen.parentElement.removeAttribute("aria-busy");
      }
      return null;
    }
  }

  async function look() {
    const body = await send("/practicals/new/look", new URLSearchParams(new FormData(form)), "Looking at it ...");
    if (!body) return;
    seen.replaceChildren(...body.childNodes);
    number();
    const found = seen.querySelectorAll(".findings li").length;
    say(found === 0 ? "In order." : `${found} to look at.`);
  }

  // Fields keep their place: only what is said of them, and what is asked at all, comes anew.
  function questions(fresh) {
    const old = form.querySelector(".questions");
    const names = box => [...box.querySelectorAll("[name], label, legend, small")].map(i => i.name ?? i.textContent.trim()).join("|");
    if (names(old) !== names(fresh)) {
      const at = document.activeElement;
      const focus = at?.id ? `#${CSS.escape(at.id)}` : at?.name ? `[name="${at.name}"]:checked` : "#none";
      for (const child of [...old.children]) if (child.matches("fieldset, .field")) child.remove();
      old.querySelector(".sends").before(...fresh.children);
      form.querySelector(focus)?.focus();
      return;
    }
    for (const field of old.querySelectorAll("[placeholder]")) field.placeholder = fresh.querySelector(`[name="${field.name}"]`)?.placeholder ?? "";
    for (const place of old.querySelectorAll("[data-fault]")) {
      const sentence = fresh.querySelector(`[data-fault="${place.dataset.fault}"]`)?.textContent ?? "";
      if (place.textContent !== sentence) place.textContent = sentence;
      place.parentElement.classList.toggle("wrong", sentence !== "");
    }
  }

  async function draft() {
    const body = await send("/practicals/new/draft", new URLSearchParams(new FormData(form)), "Writing it ...");
    if (!body) return;
    questions(body.querySelector("[data-questions]"));
    const fresh = body.querySelector("[data-text]").value;
    const faults = form.querySelector(".questions .fault:not(:empty)");
    if (!faults) {
      text.value = written = fresh;
      form.elements.written.value = body.querySelector("[data-written]").value;
    }
    seen.replaceChildren(...body.querySelector("[data-seen]").childNodes);
    number();
    say(faults ? "An answer is to be put right; the file is as it was." : "The file is new.");
  }

  const soon = work => { clearTimeout(waiting); waiting = setTimeout(work, pause); };
  text.addEventListener("input", () => { number(); soon(look); });
  text.addEventListener("scroll", () => { lines.scrollTop = text.scrollTop; });
  form.addEventListener("input", event => {
    if (!event.target.name?.startsWith("answer.")) return;
    if (byHand()) return say("You changed the file by hand, so answers leave it alone. ‘Write the file from these answers’ writes it anew.");
    soon(draft);
  });
  form.addEventListener("submit", event => {
    const button = event.submitter;
    if (button?.hasAttribute("data-draft") || (!button && document.activeElement?.name?.startsWith("answer."))) {
      event.preventDefault();
      if (!byHand() || confirm("Write the file anew? What you changed in it by hand goes.")) draft();
    } else if (button?.hasAttribute("data-look")) {
      event.preventDefault();
      look();
    } else if (button?.getAttribute("formaction")?.endsWith("/save")) saved = text.value;
  });
  seen.addEventListener("click", event => {
    const link = event.target.closest("a[data-line]");
    if (!link) return;
    event.preventDefault();
    const rows = text.value.split("\n");
    const line = Math.min(Number(link.dataset.line), rows.length);
    const start = rows.slice(0, line - 1).reduce((sum, row) => sum + row.length + 1, 0);
    const column = Math.min(Number(link.dataset.column) - 1, rows[line - 1].length);
    text.focus();
    text.setSelectionRange(start + column, start + rows[line - 1].length);
    text.scrollTop = Math.max(0, (line - 6) * (text.scrollHeight / rows.length));
  });
  window.addEventListener("beforeunload", event => { if (text.value !== saved && byHand()) event.preventDefault(); });
  number();
})();
