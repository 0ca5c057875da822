// Mass against time: counts the time, shows which point is next, sends each as it is typed and keeps it in the browser until it is sent.
"use strict";
(() => {
  const page = document.querySelector("[data-points]");
  if (!page) return;
  const key = page.dataset.key, list = page.querySelector("[data-list]");
  const clock = page.querySelector("[data-clock]"), due = page.querySelector("[data-due]");
  const start = page.querySelector("[data-start]"), again = page.querySelector("[data-again]"), trouble = page.querySelector("[data-trouble]");
  const inputs = () => [...list.querySelectorAll("[data-point] input")];
  let kept = {};
  try { kept = JSON.parse(localStorage.getItem(key) ?? "{}"); } catch { kept = {}; }
  kept.typed ??= {};
  const save = () => { try { localStorage.setItem(key, JSON.stringify(kept)); } catch { /* A full or forbidden storage: the form still sends. */ } };
  const say = text => { trouble.textContent = text; trouble.classList.toggle("hidden", !text); };

  for (const input of inputs()) {
    input.dataset.was = input.value;
    if (!input.value && kept.typed[input.name]) input.value = kept.typed[input.name];
  }

  const next = () => inputs().find(i => !i.value);
  function mark() {
    const wanted = next();
    for (const row of list.querySelectorAll("[data-point]")) row.classList.toggle("next", !!wanted && row.contains(wanted));
  }

  function tick() {
    const running = typeof kept.began === "number";
    start.classList.toggle("hidden", running);
    again.classList.toggle("hidden", !running);
    if (!running) return;
    const seconds = Math.max(0, Math.floor((Date.now() - kept.began) / 1000));
    clock.textContent = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
    const coming = [...list.querySelectorAll("[data-point]")].find(r => Number(r.dataset.minutes) * 60 >= seconds - 3);
    if (!coming) { due.textContent = "The last point is typed with the readings of the sheet."; return; }
    const left = Math.round(Number(coming.dataset.minutes) * 60 - seconds);
    due.textContent = left <= 0 ? `Read now: ${coming.dataset.time}` : `Next: ${coming.dataset.time}, in ${left} s`;
    due.classList.toggle("now", left <= 0);
  }

  // What is typed is sent at once; what could not be sent goes with the next point, or with the button.
  let sending = false;
  async function send() {
    const open = inputs().filter(i => i.value && i.value !== i.dataset.was && /^-?\d+([.,]\d+)?$/.test(i.value.trim()));
    if (sending || open.length === 0 || list.querySelector("[name=reason]")) return;
    sending = true;
    try {
      const body = new URLSearchParams(open.map(i => [i.name, i.value.trim()]));
      const answer = await fetch(page.dataset.points, { method: "POST", body, redirect: "follow" });
      const fault = new URL(answer.url).searchParams.get("fault");
      say(fault ?? (answer.ok ? "" : "Not sent yet; it is kept on this device."));
      if (answer.ok && !fault) {
        for (const input of open) { input.dataset.was = input.value; input.closest("[data-point]").classList.add("sent"); delete kept.typed[input.name]; }
        save();
      }
    } catch {
      say("No connection: what you type is kept on this device and sent later.");
    } finally {
      sending = false;
    }
  }

  start.addEventListener("click", () => { kept.began = Date.now(); save(); tick(); next()?.focus(); });
  again.addEventListener("click", () => { if (confirm("Start the clock anew, from 0?")) { kept.began = Date.now(); save(); tick(); } });
  list.addEventListener("input", event => { if (event.target.name !== "reason") { kept.typed[event.target.name] = event.target.value; save(); } });
  list.addEventListener("change", () => { mark(); send(); });
  list.addEventListener("keydown", event => {
    if (event.key !== "Enter" || event.target.tagName !== "INPUT") return;
    event.preventDefault();
    const all = inputs(), at = all.indexOf(event.target);
    mark();
    send();
    all.slice(at + 1).find(i => !i.value)?.focus();
  });
  page.querySelector("[data-timing]").classList.remove("hidden");
  mark();
  tick();
  setInterval(tick, 250);
  setInterval(send, 5000);
})();
