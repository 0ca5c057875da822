// The form of a plan: every change fetches the figures anew, the request before it is given up, and the address keeps the plan.
"use strict";
(() => {
  const form = document.querySelector("form[data-plan]");
  const figures = document.getElementById("figures");
  const said = document.getElementById("figures-said");
  if (!form || !figures) return;
  form.querySelector(".sends button").classList.add("hidden");
  const say = text => { if (said.textContent !== text) said.textContent = text; };
  let waiting = 0, asked = null, shown = query();

  // What was filled in, without what was left empty.
  function query() {
    const fields = new URLSearchParams();
    for (const [name, value] of new FormData(form)) if (value.trim() !== "") fields.append(name, value.trim());
    return fields.toString();
  }

  // What a step of the plan brings about holds while the step is not left out; where it is, the teacher may say it.
  function given() {
    for (const box of form.querySelectorAll("[data-given]")) {
      const out = [...form.querySelectorAll("[name=without]")].some(w => w.value === box.dataset.given && w.checked);
      if (box.disabled === out) [box.disabled, box.checked] = [!out, !out];
    }
  }

  // Puts what is wrong beside its field.
  function placeFaults() {
    const faults = new Map();
    for (const item of figures.querySelectorAll("[data-for]")) {
      faults.set(item.dataset.for, [...faults.get(item.dataset.for) ?? [], item.textContent]);
    }
    for (const place of form.querySelectorAll("[data-fault]")) {
      const sentences = (faults.get(place.dataset.fault) ?? []).join(" ");
      if (place.textContent !== sentences) place.textContent = sentences;
      place.parentElement.classList.toggle("wrong", sentences !== "");
      const input = form.elements[place.dataset.fault];
      if (input?.setAttribute) sentences ? input.setAttribute("aria-invalid", "true") : input.removeAttribute("aria-invalid");
    }
  }

  async function part(address, signal) {
    const answer = await fetch(address, { headers: { Accept: "text/html" }, signal });
    if (!answer.ok) throw new Error(answer.status);
    return new DOMParser().parseFromString(await answer.text(), "text/html").body;
  }

  // Ways out take longer, so they come after the figures.
  async function ways(signal) {
    const place = figures.querySelector("[data-ways]");
    if (!place) return;
    place.textContent = "Looking for ways out ...";
    place.replaceWith(...(await part(place.dataset.ways, signal)).childNodes);
  }

  async function ask() {
    const now = query();
    // Given up first: figures on their way must not come in under a form that has gone back to what is shown.
    asked?.abort();
    if (now === shown) {
      figures.removeAttribute("aria-busy");
      placeFaults();
      say("");
      return resume();
    }
    asked = new AbortController();
    const { signal } = asked;
    figures.setAttribute("aria-busy", "true");
    say("Working it out ...");
    try {
      const fresh = await part(`${form.dataset.plan}?${now}`, signal);
      figures.replaceChildren(...fresh.childNodes);
      shown = now;
      history.replaceState(null, "", now === "" ? location.pathname : `?${now}`);
      placeFaults();
      say(figures.querySelector(".form-faults") ? "Something in the form is to be put right." : "The figures are new.");
      figures.removeAttribute("aria-busy");
      await ways(signal);
    } catch (trouble) {
      if (trouble.name === "AbortError") return;
      figures.removeAttribute("aria-busy");
      say("No answer from the program. The figures are those of before.");
    }
  }

  // The ways of the figures that are shown, where they had not come yet.
  function resume() {
    asked = new AbortController();
    return ways(asked.signal).catch(trouble => {
      if (trouble.name !== "AbortError") say("No answer from the program about ways out.");
    });
  }

  form.addEventListener("input", () => { clearTimeout(waiting); waiting = setTimeout(ask, 350); });
  form.addEventListener("change", () => { given(); clearTimeout(waiting); waiting = setTimeout(ask, 30); });
  form.addEventListener("submit", event => { event.preventDefault(); clearTimeout(waiting); ask(); });
  resume();
})();
