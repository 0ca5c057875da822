// The list of practicals follows the form above it: every change fetches it anew, and the address keeps what was looked for.
"use strict";
(() => {
  const form = document.querySelector("form[data-shelf]");
  const shelf = document.getElementById("shelf");
  const said = document.getElementById("shelf-said");
  if (!form || !shelf) return;
  const needs = form.querySelector("details");
  if (window.matchMedia("(min-width: 52.01rem)").matches) needs.open = true;
  let waiting = 0, asked = null;

  function query() {
    const fields = new URLSearchParams();
    for (const [name, value] of new FormData(form)) if (value.trim() !== "") fields.append(name, value.trim());
    return fields.toString();
  }

  // What is wrong stands beside its field, and only there.
  function placeFaults() {
    for (const place of form.querySelectorAll("[data-fault]")) {
      const item = shelf.querySelector(`[data-for="${place.dataset.fault}"]`);
      const sentence = item?.textContent ?? "";
      if (place.textContent !== sentence) place.textContent = sentence;
      place.parentElement.classList.toggle("wrong", sentence !== "");
      item?.remove();
    }
  }

  async function look() {
    const now = query();
    asked?.abort();
    asked = new AbortController();
    shelf.setAttribute("aria-busy", "true");
    try {
      const answer = await fetch(now === "" ? form.action : `${form.action}?${now}`, { headers: { Accept: "text/html" }, signal: asked.signal });
      const fresh = answer.ok && new DOMParser().parseFromString(await answer.text(), "text/html").getElementById("shelf");
      if (!fresh) throw new Error(answer.status);
      shelf.replaceChildren(...fresh.childNodes);
      placeFaults();
      history.replaceState(null, "", now === "" ? location.pathname : `?${now}`);
      said.textContent = shelf.querySelector("[data-found]").textContent;
      shelf.removeAttribute("aria-busy");
    } catch (trouble) {
      if (trouble.name === "AbortError") return;
      shelf.removeAttribute("aria-busy");
      said.textContent = "No answer from the program. The list is that of before.";
    }
  }

  placeFaults();
  form.addEventListener("input", () => { clearTimeout(waiting); waiting = setTimeout(look, 250); });
  form.addEventListener("change", () => { clearTimeout(waiting); waiting = setTimeout(look, 30); });
  form.addEventListener("submit", event => { event.preventDefault(); clearTimeout(waiting); look(); });
  form.querySelector("[data-all]").addEventListener("click", event => {
    event.preventDefault();
    for (const field of form.querySelectorAll("input, select")) field.type === "checkbox" ? field.checked = false : field.value = "";
    look();
  });
})();
