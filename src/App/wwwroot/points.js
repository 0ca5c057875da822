// Mass against time: counts the time, shows which point is next, and sends each through the queue, so that it goes on without a
// connection. A number is sent when it is left or Enter is pressed, never while it is being typed.
"use strict";
(() => {
  const calx = window.calx, { make, text, show } = calx, page = document.getElementById("points");
  if (!page) return;
  const find = (selector, from = page) => from.querySelector(selector);
  const { lesson, device } = page.dataset, group = Number(page.dataset.group), trial = Number(page.dataset.trial);
  const queue = new calx.Queue(lesson, device, page.dataset.station === "yes" ? 0 : group, page.dataset.entries, render);
  const list = find("[data-list]"), refused = find("#refused"), trouble = find("[data-trouble]");
  const clock = find("[data-clock]"), due = find("[data-due]"), start = find("[data-start]"), again = find("[data-again]");
  const rows = () => [...list.querySelectorAll("[data-point]")];
  const open = () => rows().filter(row => find("input:not(.hidden)", row));
  const plain = value => value.trim().replace(",", ".");

  // The clock and what is half typed, in the browser's storage: a page that is left or reloaded has them again.
  const key = `calx.${lesson}.${device}.p.${group}.${trial}`;
  let kept = {};
  try { kept = JSON.parse(localStorage.getItem(key) ?? "{}"); } catch { /* Begun anew. */ }
  kept.typed ??= {};
  const save = () => { try { localStorage.setItem(key, JSON.stringify(kept)); } catch { /* Remembered while the page is open. */ } };
  const say = words => { text(trouble, words); show(trouble, words !== ""); };

  const own = e => e.kind === "reading" && e.group === group && e.trial === trial;
  const localOf = what => queue.local().filter(e => own(e) && e.what === what).pop();

  function render() {
    queue.shown(new Set((find("[data-kept]")?.dataset.kept ?? "").split(" ")));
    const waiting = queue.waiting();
    calx.refusal(refused, queue.refused().find(i => own(i.entry)), queue, item => {
      queue.set(item, { state: "aside" });
      kept.typed[item.entry.what] = item.entry.written;
      render();
      find(`input[name="${CSS.escape(item.entry.what)}"]`)?.focus();
    });
    for (const row of rows()) {
      const input = find("input", row), local = localOf(row.dataset.point);
      let shown = find("[data-local]", row);
      if (!input) continue;
      if (local && !shown) { shown = make("strong"); shown.dataset.local = ""; input.after(shown); }
      if (shown) text(shown, local ? `${local.written} g${waiting.some(i => i.entry.id === local.id) ? ", waits" : ""}` : "");
      for (const part of [input, find(".unit", row)]) show(part, !local);
      if (document.activeElement !== input) input.value = local ? "" : kept.typed[input.name] ?? "";
    }
    const sends = find("button.tall", list);
    if (sends) show(sends, open().length > 0);
    mark();
    line();
  }

  function line() {
    const waits = queue.waiting().length, isOn = document.body.dataset.connected !== "no" && queue.isConnected;
    const wait = `${waits} ${waits === 1 ? "waits" : "wait"} to be sent`;
    text(find("[data-line]"), isOn ? waits ? wait : "Connected" : waits ? `No connection: ${wait}` : "No connection: type on, it is sent later");
    find("[data-line]").dataset.state = isOn ? waits ? "waits" : "well" : "off";
    if (queue.trouble) say(queue.trouble);
  }

  const seconds = () => typeof kept.began === "number" ? Math.max(0, Math.floor((Date.now() - kept.began) / 1000)) : 0;
  const secondsOf = row => Number(row.dataset.minutes) * 60;
  const apart = () => rows().length > 0 ? secondsOf(rows()[0]) : 30;

  // While the clock runs a time that was missed is passed over: what is typed now belongs to the one that is due.
  const late = () => typeof kept.began === "number" ? seconds() - 0.7 * apart() : 0;
  const next = () => open().find(row => secondsOf(row) >= late()) ?? null;
  function mark() {
    const wanted = next();
    for (const row of rows()) row.classList.toggle("next", row === wanted);
  }

  function tick() {
    const running = typeof kept.began === "number";
    show(start, !running);
    show(again, running);
    if (!running) return;
    const now = seconds();
    text(clock, `${Math.floor(now / 60)}:${String(now % 60).padStart(2, "0")}`);
    const coming = rows().find(row => secondsOf(row) >= now - 3);
    if (!coming) { text(due, "The last point is typed with your readings."); due.classList.remove("now"); mark(); return; }
    const left = Math.round(secondsOf(coming) - now);
    text(due, left <= 0 ? `Read now: ${coming.dataset.time}` : `Next: ${coming.dataset.time}, in ${left} s`);
    due.classList.toggle("now", left <= 0);
    mark();
  }

  // Other decimals than the balance shows are asked about once; nothing is refused here.
  function keep(input, isSure) {
    const written = plain(input.value), row = input.closest("[data-point]");
    // Leaving a field after Enter changes nothing any more.
    if (!written || !row || localOf(input.name)) return true;
    if (!/^-?\d+(\.\d+)?$/.test(written)) { say(`${row.dataset.time}: type all that the display shows, digits with a point.`); return false; }
    const decimals = page.dataset.decimals === undefined ? NaN : Number(page.dataset.decimals);
    const question = isSure || input.dataset.asked === written ? null : calx.decimalsQuestion(written, decimals);
    if (question) {
      input.dataset.asked = written;
      say(`${row.dataset.time}: ${question.words} Put it right, or press Enter once more and ${written} is sent.`);
      return false;
    }
    say("");
    delete kept.typed[input.name];
    save();
    queue.add({ kind: "reading", group, trial, what: input.name, written, balance: page.dataset.balance || null }, `Mass at ${row.dataset.time}: ${written}\u00a0g`);
    return true;
  }

  const begin = () => { kept.began = Date.now(); save(); tick(); };
  start.addEventListener("click", () => { begin(); const row = next(); if (row) find("input", row).focus(); });
  again.addEventListener("click", () => { if (window.confirm("Start the clock anew, from 0?")) begin(); });
  list.addEventListener("input", event => { kept.typed[event.target.name] = event.target.value; save(); });
  list.addEventListener("change", event => { if (event.target.matches("[data-point] input")) keep(event.target, false); });
  list.addEventListener("keydown", event => {
    if (event.key !== "Enter" || !event.target.matches("[data-point] input")) return;
    event.preventDefault();
    const input = event.target, at = secondsOf(input.closest("[data-point]"));
    if (!keep(input, input.dataset.asked === plain(input.value))) return;
    const after = open().filter(r => secondsOf(r) > at), row = after.find(r => secondsOf(r) >= late()) ?? after[0];
    if (row) find("input", row).focus(); else input.blur();
  });
  list.addEventListener("submit", event => {
    event.preventDefault();
    for (const row of open()) keep(find("input", row), true);
  });
  document.addEventListener("refreshed", render);
  new MutationObserver(() => {
    if (document.body.dataset.connected === "yes") queue.heard();
    render();
  }).observe(document.body, { attributes: true, attributeFilter: ["data-connected"] });

  document.body.classList.add("scripted");
  show(find("[data-timing]"), Boolean(find("[data-point] input")));
  render();
  tick();
  setInterval(tick, 250);
  queue.flush();
})();
