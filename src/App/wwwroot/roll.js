// Taps on the roll are sent without leaving the page: only the part that they change is put in anew.
"use strict";
document.addEventListener("submit", async event => {
  const form = event.target;
  const part = form.dataset.part && document.getElementById(form.dataset.part);
  if (!part || event.defaultPrevented) return;
  event.preventDefault();
  const pressed = (event.submitter ?? document.activeElement)?.id;
  const fields = new URLSearchParams(new FormData(form, event.submitter ?? undefined));
  try {
    const answer = await fetch(form.action, { method: "POST", body: fields, headers: { Accept: "text/html" } });
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const fresh = answer.ok && page.getElementById(part.id);
    if (!fresh) throw new Error(answer.status);
    part.replaceChildren(...fresh.childNodes);
    if (pressed) document.getElementById(pressed)?.focus();
  } catch {
    form.removeAttribute("data-part");
    form.requestSubmit(event.submitter ?? undefined);
  }
});
