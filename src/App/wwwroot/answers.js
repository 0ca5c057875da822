// A student's answers: shows one question at a time, keeps what is half typed, and sends through the queue, so that it goes on
// without a connection.
"use strict";
(() => {
  const calx = window.calx, { make, text, show } = calx;
  const page = document.getElementById("answers");
  if (!page) return;
  const find = (selector, from = page) => from.querySelector(selector);
  const live = find("#live"), pad = find("#pad"), refused = find("#refused"), mine = find("#mine");
  const { lesson, device } = page.dataset, group = Number(page.dataset.group), member = Number(page.dataset.member);
  const isAtOnce = page.dataset.atOnce === "yes";
  const queue = new calx.Queue(lesson, device, group, page.dataset.entries, render);
  queue.retypes = "answer";
  // Whatever the group: an answer is its student's. Readings go only to the group for which they were typed.
  queue.isOwn = item => item.entry.kind === "answer" || (group > 0 && item.entry.group === group);
  const doing = { current: page.dataset.current, changing: "", hasMoved: false };

  document.body.classList.add("scripted");
  const isConnected = () => document.body.dataset.connected !== "no" && queue.isConnected;
  const questions = () => [...live.querySelectorAll("[data-question]")];
  const questionOf = id => questions().find(q => q.dataset.question === id);
  const idOf = form => form.closest("[data-question]").dataset.question;

  // What is half typed, in the browser's storage: a page that is left or reloaded has it again.
  const draftKey = id => `calx.${lesson}.${device}.d.${member}.${id}`;
  const memory = new Map();
  const draft = id => { try { return localStorage.getItem(draftKey(id)) ?? memory.get(id); } catch { return memory.get(id); } };
  function keepDraft(id, value) {
    memory.set(id, value);
    try { localStorage.setItem(draftKey(id), value); } catch { /* The page remembers. */ }
  }
  function dropDraft(id) {
    memory.delete(id);
    try { localStorage.removeItem(draftKey(id)); } catch { /* Nothing was there. */ }
  }

  const own = e => e.kind === "answer" && e.member === member;
  const localOf = id => queue.local().filter(e => own(e) && e.what === `answer.${id}`).pop();
  const isAnswered = q => q.dataset.answered === "yes" || localOf(q.dataset.question) !== undefined;

  const say = words => calx.say(find("[data-said]"), words);

  function render() {
    queue.shown(new Set((find("[data-kept]", live)?.dataset.kept ?? "").split(" ")));
    // What another student on this device has to put right waits for that student.
    const lost = queue.refused().find(i => i.entry.kind !== "answer" || own(i.entry));
    calx.refusal(refused, lost, queue, typeAgain);
    calx.mine(mine, queue, typeAgain);
    // The lists stand with all answers; in the way of a question they are not.
    show(mine.parentElement, doing.current === "all" && !lost);
    if (!questionOf(doing.current)) doing.current = questions()[0]?.dataset.question ?? "";
    for (const q of questions()) renderQuestion(q, q.dataset.question, q.dataset.question === doing.current && !lost);
    renderOverview();
    renderLine();
    renderPad(lost);
    if (doing.hasMoved) {
      doing.hasMoved = false;
      const q = questionOf(doing.current), target = field(q) ?? find("h1", q);
      if (!target?.matches("input")) target?.setAttribute("tabindex", "-1");
      target?.focus({ preventScroll: true });
      if (target?.matches("input")) target.setSelectionRange(doing.changing ? 0 : target.value.length, target.value.length);
      window.scrollTo(0, 0);
    }
  }

  function renderQuestion(q, id, isShown) {
    show(q, isShown);
    const form = find("[data-answer]", q), local = localOf(id), open = find("details.answering", q);
    const place = find("[data-local]", q), stands = find("[data-stands]", q);
    if (place) {
      show(place, Boolean(local));
      show(stands, !local);
      const words = local ? `${local.shown ?? local.text}|${queue.waiting().some(i => i.entry.id === local.id)}` : "";
      if (place.dataset.of !== words) {
        place.dataset.of = words;
        place.replaceChildren();
        if (local) {
          const wrote = make("p", "wrote");
          wrote.append(make("span", "quiet", "You wrote "), make("strong", "", local.shown ?? local.text));
          place.append(wrote, make("p", "quiet", words.endsWith("true") ? "It waits to be sent." : "Handed in."));
        }
      }
    }
    if (open) {
      const isOpen = !isAnswered(q) || doing.changing === id;
      if (open.open !== isOpen) open.open = isOpen;
      show(find("summary", open), isAnswered(q));
    }
    if (!form) return;
    const input = find("[data-draft]", form), half = draft(id);
    if (input && half !== undefined && half !== null && document.activeElement !== input && input.value !== half) input.value = half;
    if (form.dataset.kind === "value") input.setAttribute("inputmode", "none");
  }

  function renderOverview() {
    for (const row of live.querySelectorAll(".overview [data-of]")) {
      const local = localOf(row.dataset.of);
      if (!local) continue;
      const waits = queue.waiting().some(i => i.entry.id === local.id);
      text(find("[data-given]", row), `${local.shown ?? local.text}${waits ? ", waits to be sent" : ""}`);
    }
  }

  function renderLine() {
    const waits = queue.waiting().length, lost = queue.refused().length, wait = `${waits} ${waits === 1 ? "waits" : "wait"} to be sent`;
    const off = waits ? `No connection: ${wait}` : "No connection: type on, it is sent later";
    text(find("[data-line]"), !isConnected() ? off : waits ? wait : "Connected");
    find("[data-line]").dataset.state = isConnected() ? waits ? "waits" : "well" : "off";
    text(find("[data-count]"), waits ? `${waits} ${waits === 1 ? "waits" : "wait"}` : lost ? `${lost} not taken` : "");
    const unkept = "This browser keeps nothing once the page is closed. Leave it open until all is sent.";
    const trouble = queue.trouble || (queue.isKept || waits === 0 ? "" : unkept);
    text(find("[data-trouble]"), trouble);
    show(find("[data-trouble]"), trouble !== "");
  }

  // The field of a question that can be typed in now.
  function field(q) {
    return q && find("details.answering", q)?.open ? find("input.figure, textarea", q) : null;
  }
  function renderPad(lost) {
    const q = questionOf(doing.current), input = lost ? null : field(q);
    show(pad, Boolean(input) && find("[data-answer]", q)?.dataset.kind === "value");
  }

  function go(change) {
    Object.assign(doing, change, { hasMoved: true });
    render();
  }

  function next(id) {
    const all = questions().filter(q => q.dataset.question !== "all"), here = all.findIndex(q => q.dataset.question === id);
    const open = all.filter(q => !isAnswered(q));
    return (open.find(q => all.indexOf(q) > here) ?? open[0])?.dataset.question ?? "all";
  }

  function typeAgain(item) {
    if (!own(item.entry)) { say("Another student typed this: hand on first"); return; }
    const id = item.entry.what.replace("answer.", "");
    keepDraft(id, item.entry.text);
    queue.set(item, { state: "aside" });
    go({ current: id, changing: id });
  }

  // The next student finds a device from which everything has gone.
  async function handOn(event, form) {
    if (isConnected() && queue.waiting().length === 0) return;
    event.preventDefault();
    await queue.flush();
    if (queue.waiting().length === 0 && isConnected()) form.submit();
    else say(isConnected() ? "Not all is sent yet: hand on when it is" : "No connection: hand on when it is back");
  }

  // An answer from its form: what is kept, and how it is shown until the page has it from the program.
  function entryOf(form) {
    const chosen = find("[name=text]:checked", form), input = find("[data-draft]", form), unit = find("[name=unit]", form);
    const said = (chosen ?? input)?.value.trim() ?? "";
    const entry = { kind: "answer", group, trial: 1, member, what: form.dataset.what, text: said };
    if (unit?.value) entry.unit = unit.value;
    const behind = unit?.value && unit.value !== "none" && !/[a-zA-Z%°³]\s*$/.test(said) ? `\u00a0${unit.value}` : "";
    entry.shown = chosen ? chosen.parentElement.textContent.trim() : `${said}${behind}`;
    return entry;
  }

  page.addEventListener("submit", event => {
    const form = event.target;
    if (form.matches("[data-hand-on]")) { handOn(event, form); return; }
    if (form.matches(".leave")) {
      const waits = queue.waiting().length;
      const asked = `${waits} ${waits === 1 ? "entry waits" : "entries wait"} to be sent. What waits stays on this device, and is sent only `
        + "when it joins this lesson again. Leave now?";
      if (waits && !window.confirm(asked)) event.preventDefault();
      return;
    }
    if (!form.matches("[data-answer]")) return;
    event.preventDefault();
    const id = idOf(form), entry = entryOf(form);
    if (!entry.text) return;
    dropDraft(id);
    const label = `${form.closest("[data-question]").dataset.label}: ${entry.shown.slice(0, 60)}`;
    doing.changing = "";
    queue.add(entry, label);
    if (!isConnected()) say(`${label}: waits to be sent`);
    go(isAtOnce ? { current: id } : { current: next(id) });
  });

  page.addEventListener("click", event => {
    const link = event.target.closest("[data-go]");
    if (link) {
      event.preventDefault();
      go({ current: link.dataset.go, changing: "" });
      return;
    }
    const summary = event.target.closest("details.answering > summary");
    if (!summary) return;
    event.preventDefault();
    const id = idOf(summary);
    go({ changing: doing.changing === id ? "" : id });
  });

  live.addEventListener("input", event => {
    if (event.target.matches("[data-draft]")) keepDraft(idOf(event.target), event.target.value);
  });
  document.addEventListener("calx:kept", event => {
    const sent = event.detail ?? [];
    if (sent.length) say(sent.length === 1 ? `${sent[0]}: sent` : `${sent.length} answers sent`);
  });
  live.addEventListener("refreshed", render);
  new MutationObserver(() => {
    if (document.body.dataset.connected === "yes") queue.heard();
    render();
  }).observe(document.body, { attributes: true, attributeFilter: ["data-connected"] });

  calx.answerPad(pad, () => field(questionOf(doing.current)));
  if (localOf(doing.current)) doing.current = next(doing.current);
  render();
  queue.flush();
})();
