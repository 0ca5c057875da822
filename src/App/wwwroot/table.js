// A group's page, or a balance station: shows the present step, takes what is typed, and goes on without a connection.
"use strict";
(() => {
  const calx = window.calx, { text, show } = calx;
  const table = document.getElementById("table");
  if (!table) return;
  const find = (selector, from = table) => from.querySelector(selector);
  const live = find("#live"), ask = find("#ask"), refused = find("#refused"), mine = find("#mine"), tell = find("[data-tell-now]");
  const { lesson, device } = table.dataset, ownGroup = Number(table.dataset.group), isStation = ownGroup === 0;
  const queue = new calx.Queue(lesson, device, ownGroup, table.dataset.entries, render);
  const which = `calx.${lesson}.${device}.which`;
  const remembered = (() => { try { return JSON.parse(localStorage.getItem(which)) ?? {}; } catch { return {}; } })();
  const drafts = new Map();
  // What the person is doing: the part of the page, the group at a station, a reading typed again, one typed ahead of its step.
  const doing = {
    part: "now", group: ownGroup || Number(table.dataset.chosen) || 0, again: null, isAhead: false, typed: "", typedFor: "", picked: {}, hasMoved: false,
  };
  const stage = calx.stage(find("#stage"), doing, {
    isStation, isAssessed: table.dataset.assessed === "yes", remembered, keep, render,
    back: () => go({ again: null, isAhead: false, group: ownGroup }),
    ahead: () => go({ isAhead: true }),
  });
  let focused = "";

  document.body.classList.add("scripted");
  const remember = () => { try { localStorage.setItem(which, JSON.stringify(remembered)); } catch { /* Remembered while the page is open. */ } };
  const section = () => find(`[data-way][data-group="${doing.group}"]`, live);
  const isConnected = () => document.body.dataset.connected !== "no" && queue.isConnected;

  const say = words => calx.say(find("[data-said]"), words);

  function render() {
    queue.shown(new Set((find("[data-kept]", live)?.dataset.kept ?? "").split(" ")));
    const asked = queue.asked()[0], lost = doing.again ? undefined : queue.refused()[0];
    table.dataset.part = doing.part;
    calx.refusal(refused, lost, queue, typeAgain);
    calx.question(ask, doing.again || lost ? null : asked, queue, typeAgain);
    calx.mine(mine, queue, typeAgain);
    renderLine();
    renderTell();
    show(find(".chooser", live), isStation && doing.group === 0);
    const way = doing.part === "now" && (!(asked || lost) || doing.again) ? section() : null;
    stage.render(way, queue.local().filter(e => e.group === doing.group && e.trial === Number(way?.dataset.trial)));
    for (const link of table.querySelectorAll("nav [data-part]")) {
      if (link.dataset.part === doing.part) link.setAttribute("aria-current", "true"); else link.removeAttribute("aria-current");
    }
  }

  function renderLine() {
    const waits = queue.waiting().length, refused = queue.refused().length;
    const wait = `${waits} ${waits === 1 ? "waits" : "wait"} to be sent`;
    const off = waits ? `No connection: ${wait}` : "No connection: type on, it is sent later";
    text(find("[data-line]"), !isConnected() ? off : waits ? wait : "Connected");
    find("[data-line]").dataset.state = isConnected() ? waits ? "waits" : "well" : "off";
    text(find("[data-count]"), waits ? `${waits} ${waits === 1 ? "waits" : "wait"}` : refused ? `${refused} not taken` : "");
    const unkept = "This browser keeps nothing once the page is closed. Leave it open until all is sent.";
    const trouble = queue.trouble || (queue.isKept || waits === 0 ? "" : unkept);
    text(find("[data-trouble]"), trouble);
    show(find("[data-trouble]"), trouble !== "");
  }

  // A danger that was ticked fills the page at once, connection or not, until the group says that the teacher is there.
  function renderTell() {
    if (!tell) return;
    const noted = new Set((find("[data-tell]", live)?.dataset.tell ?? "").split("|").filter(Boolean));
    for (const e of queue.local()) if (e.kind === "observation" && e.seen && e.stop) noted.add(e.stop);
    const key = [...noted].sort().join("|");
    let told = doing.told ?? "";
    try { told = sessionStorage.getItem(`calx.${lesson}.told`) ?? told; } catch { /* The page remembers. */ }
    text(find("[data-noted]", tell), `Noted: ${[...noted].join("; ")}`);
    show(tell, key !== "" && key !== told);
    tell.dataset.key = key;
  }

  function keep(form, reading) {
    const { what, unit } = form.dataset, group = Number(form.dataset.group), trial = Number(form.dataset.trial);
    if (reading.balance) remembered.balance = reading.balance;
    if (reading.vessel) remembered[`${group}.${trial}`] = reading.vessel;
    remember();
    const entry = { kind: "reading", group, trial, what, written: reading.written, balance: reading.balance, vessel: reading.vessel };
    if (reading.sure) entry.sure = true;
    const old = doing.again;
    if (old?.state === "asked") {
      Object.assign(entry, { replaces: old.entry.id, reason: "looked at the display again" });
      queue.remove(old);
    } else if (old?.state === "warm") {
      // Weighed again and again without a connection, each replaces the one before it.
      const before = queue.local().filter(e => e.kind === "reading" && e.what === what && e.group === group && e.trial === trial).pop();
      Object.assign(entry, { replaces: before?.id ?? old.entry.id, reason: old.reason });
    } else if (old) queue.set(old, { state: "aside" });
    const label = `${form.dataset.label}: ${reading.written}${unit ? `\u00a0${unit}` : ""}`;
    Object.assign(doing, { again: null, isAhead: false, typed: "", typedFor: "", hasMoved: true });
    if (isStation) doing.group = 0;
    add(entry, isStation ? `Group ${group}, ${label}` : label, unit ? `${form.dataset.label}\u00a0/\u00a0${unit}` : form.dataset.label);
  }

  function add(entry, label, title) {
    queue.add(entry, label, title);
    if (!isConnected()) say(`${label}: waits to be sent`);
    render();
  }

  function typeAgain(item) {
    go({ again: item, part: "now", group: isStation ? item.entry.group : ownGroup, typed: "", typedFor: "" });
  }

  function go(change) {
    Object.assign(doing, change, { hasMoved: true });
    render();
  }

  // A form of one tap, or with words in it: the same entry as without the script, but through the queue.
  function entryOf(form) {
    const { kind, what, text: said, group, trial, stop } = form.dataset;
    const entry = { kind, what, group: Number(group), trial: Number(trial), text: said ?? "" };
    let label = find("button", form).firstElementChild?.firstChild?.textContent ?? find("button", form).textContent.trim();
    if (kind === "observation") {
      entry.seen = form.dataset.seen === "yes";
      if (stop) entry.stop = stop;
      label = `${entry.seen ? "Seen" : "Not seen after all"}: ${label.replace("\u2713 ", "")}`;
    } else if (kind === "note") {
      entry.text = find("textarea", form).value.trim();
      label = `Note: ${entry.text.slice(0, 60)}`;
    } else if (what === "correction-asked") {
      const should = find("[name=should]", form).value.trim().replace(",", "."), why = find("[name=why]:checked", form)?.value ?? "";
      entry.text = `${form.dataset.label}: ${form.dataset.written} should be ${should}; ${why}.`;
      label = `Correction of ${form.dataset.label} asked`;
    }
    return { entry, label };
  }

  table.addEventListener("submit", event => {
    const form = event.target;
    if (form.matches("[data-leave]")) {
      const waits = queue.waiting().length;
      const asked = `${waits} ${waits === 1 ? "entry waits" : "entries wait"} to be sent. What waits stays on this device, and is sent only `
        + "when it joins this lesson again. Leave now?";
      if (waits && !window.confirm(asked)) event.preventDefault();
      return;
    }
    if (!form.matches("[data-entry]")) return;
    event.preventDefault();
    const { entry, label } = entryOf(form);
    if (entry.kind === "note" && !entry.text) return;
    doing.hasMoved = find("#stage").contains(form);
    doing.isAhead = false;
    form.reset();
    form.closest("details")?.removeAttribute("open");
    for (const key of drafts.keys()) if (key.startsWith(draftOf(form))) drafts.delete(key);
    add(entry, label);
  });

  // What was weighed too warm is typed once more in its own place.
  document.addEventListener("click", event => {
    const form = event.target.closest("button")?.closest("[data-warm]");
    if (!form) return;
    event.preventDefault();
    const { of, what, label, unit, balance, vessel, reason } = form.dataset;
    const entry = { id: of, what, group: Number(form.dataset.group), trial: Number(form.dataset.trial), balance, vessel };
    typeAgain({ state: "warm", reason, title: `${label}\u00a0/\u00a0${unit}`, entry });
  });

  document.addEventListener("click", event => {
    const link = event.target.closest("nav [data-part], [data-choose], [data-told]");
    if (!link) return;
    event.preventDefault();
    if (link.dataset.choose) Object.assign(doing, { group: Number(link.dataset.choose), hasMoved: true });
    else if (link.dataset.part) { doing.part = link.dataset.part; window.scrollTo(0, 0); }
    else {
      doing.told = tell.dataset.key;
      try { sessionStorage.setItem(`calx.${lesson}.told`, doing.told); } catch { /* The page remembers. */ }
    }
    render();
  });

  // Digits typed on a keyboard go into the field wherever the focus is.
  document.addEventListener("keydown", event => {
    const input = find("#stage:not(.hidden) .figure");
    if (!input || event.ctrlKey || event.metaKey || event.altKey || event.target.matches("input:not([type=radio]), textarea, select")) return;
    if (/^[0-9.,]$/.test(event.key) || event.key === "Backspace") input.focus();
  });

  // What is half typed in a part that the program sends anew is put back.
  const draftOf = form => `${form.dataset.what}|${form.dataset.label ?? ""}|`;
  live.addEventListener("input", event => {
    const form = event.target.closest("form[data-entry]");
    if (form && event.target.matches("textarea, input[name=should]")) drafts.set(draftOf(form) + event.target.name, event.target.value);
  });
  const tapOf = form => `${form.dataset.kind}|${form.dataset.what}|${form.dataset.text ?? ""}`;
  live.addEventListener("focusin", event => {
    const form = event.target.closest("form");
    focused = form ? tapOf(form) : "";
  });
  document.addEventListener("calx:kept", event => {
    const sent = event.detail ?? [];
    if (sent.length) say(sent.length === 1 ? `${sent[0]}: sent` : `${sent.length} entries sent`);
  });
  live.addEventListener("refreshed", () => {
    for (const form of live.querySelectorAll("form[data-entry]")) {
      for (const field of form.querySelectorAll("textarea, input[name=should]")) field.value ||= drafts.get(draftOf(form) + field.name) ?? "";
      if (document.activeElement === document.body && focused === tapOf(form)) find("button", form)?.focus({ preventScroll: true });
    }
    render();
  });
  new MutationObserver(() => {
    if (document.body.dataset.connected === "yes") queue.heard();
    render();
  }).observe(document.body, { attributes: true, attributeFilter: ["data-connected"] });

  const part = location.hash.slice(1);
  if (["sent", "seen", "help"].includes(part) && !isStation) doing.part = part;
  render();
  queue.flush();
})();
