// The teacher's table by keyboard: Enter keeps a reading and goes down, arrows move. A kept reading is changed only with a reason.
"use strict";
(() => {
  const form = document.querySelector("[data-grid]");
  if (!form) return;
  const fault = document.querySelector("[data-grid-fault]"), said = document.querySelector("[data-grid-said]");
  const reason = form.querySelector("[name=reason]");
  const cells = () => [...form.querySelectorAll("input[data-what]")];
  const newId = () => {
    const bytes = crypto.getRandomValues(new Uint8Array(16));
    return [...bytes].map(b => b.toString(16).padStart(2, "0")).join("");
  };
  const show = text => { fault.textContent = text; fault.classList.toggle("hidden", !text); };

  const words = ["no decimals", "one decimal", "two decimals", "three decimals", "four decimals", "five decimals"];
  const balances = new Map(form.dataset.balances.split(" ").filter(Boolean).map(b => [b.split("=")[0].toUpperCase(), b.split("=")[1]]));

  // What is asked where the decimals are not those of the balance; null for none, or where no balance shows the reading.
  function doubt(input, typed) {
    if (input.dataset.decimals === undefined || !/^-?\d+(\.\d+)?$/.test(typed)) return null;
    const letter = form.querySelector(`[name="b.${input.dataset.group}"]`).value.trim();
    const decimals = letter ? balances.get(letter.toUpperCase()) ?? "" : input.dataset.decimals;
    const has = (typed.split(".")[1] ?? "").length;
    if (decimals === "" || has === Number(decimals)) return null;
    const shows = `${letter ? `balance ${letter}` : "the balance"} shows ${words[decimals] ?? `${decimals} decimals`}`;
    const whole = `${has === 0 ? `${typed}.` : typed}${"0".repeat(Math.max(0, decimals - has))}`;
    return `${shows}${has < decimals ? `: ${whole}?` : "."} Put it right, or press Enter once more and ${typed} is kept as written.`;
  }

  // A cell keeps the id of what was typed until it is answered, so that trying again after a lost answer is the same entry.
  async function keep(input, isPressed) {
    const typed = input.value.trim().replace(",", ".");
    if (!typed || typed === input.dataset.was) { input.value = input.dataset.was; input.classList.remove("waiting"); return true; }
    if (input.dataset.entry && !reason.value.trim()) {
      show(`${input.getAttribute("aria-label")}: ${input.dataset.was} is kept already. Give the reason below the table, then press Enter again.`);
      reason.focus();
      reason.dataset.back = input.name;
      return false;
    }
    const question = doubt(input, typed);
    if (question && !(isPressed && input.dataset.asked === typed)) {
      input.dataset.asked = typed;
      show(`${input.getAttribute("aria-label")}: ${question}`);
      input.focus();
      return false;
    }
    if (input.dataset.pending !== typed) { input.dataset.pending = typed; input.dataset.id = newId(); input.dataset.typedAt = new Date(window.calxNow()).toISOString(); }
    input.classList.add("waiting");
    const entry = {
      id: input.dataset.id, kind: "reading", group: Number(input.dataset.group), trial: Number(input.dataset.trial), what: input.dataset.what,
      written: typed, balance: form.querySelector(`[name="b.${input.dataset.group}"]`).value.trim() || null, typedAt: input.dataset.typedAt,
    };
    if (input.dataset.entry) { entry.replaces = input.dataset.entry; entry.reason = reason.value.trim(); }
    try {
      const answer = await fetch(form.dataset.grid, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify({ entries: [entry] }) });
      const result = (await answer.json()).results?.[0];
      if (!result || result.result === "refused") { show(`${input.getAttribute("aria-label")}: ${result?.reason ?? "not kept yet; press Enter to try again."}`); return false; }
    } catch {
      show(`${input.getAttribute("aria-label")}: no connection, so ${typed} is not kept yet. Press Enter to try again.`);
      return false;
    }
    show("");
    input.value = typed;
    input.dataset.was = typed;
    input.dataset.entry = input.dataset.id;
    delete input.dataset.pending;
    input.classList.remove("waiting");
    input.classList.add("kept");
    said.textContent = `${input.getAttribute("aria-label")}: ${typed} kept`;
    return true;
  }

  function move(input, down, right) {
    const rows = [...form.querySelectorAll("tbody tr")];
    const row = rows.indexOf(input.closest("tr"));
    const column = [...input.closest("tr").querySelectorAll("input")].indexOf(input);
    rows[row + down]?.querySelectorAll("input")[column + right]?.focus();
  }

  form.addEventListener("keydown", async event => {
    const input = event.target;
    if (input === reason && event.key === "Enter") {
      event.preventDefault();
      const waiting = form.querySelector(`[name="${CSS.escape(reason.dataset.back ?? "")}"]`);
      if (waiting && await keep(waiting, true)) { reason.value = ""; waiting.focus(); move(waiting, 1, 0); }
      return;
    }
    if (!input.matches("input[data-what], input[data-balance]")) return;
    const atEnd = input.selectionStart === input.value.length, atStart = input.selectionEnd === 0;
    if (event.key === "Enter") {
      event.preventDefault();
      if (input.matches("[data-balance]") || await keep(input, true)) move(input, 1, 0);
    } else if (event.key === "ArrowDown") { event.preventDefault(); move(input, 1, 0); }
    else if (event.key === "ArrowUp") { event.preventDefault(); move(input, -1, 0); }
    else if (event.key === "ArrowRight" && atEnd) { event.preventDefault(); move(input, 0, 1); }
    else if (event.key === "ArrowLeft" && atStart) { event.preventDefault(); move(input, 0, -1); }
    else if (event.key === "Escape") { input.value = input.dataset.was ?? input.value; show(""); }
  });
  form.addEventListener("focusin", event => { if (event.target.matches("input")) event.target.select(); });
  form.addEventListener("focusout", event => {
    // Leaving a new reading keeps it; leaving a changed one waits for Enter, since that needs a reason.
    const input = event.target;
    if (!input.matches("input[data-what]") || input.dataset.entry) return;
    // One that is doubted waits for Enter too: leaving the field is no answer.
    const typed = input.value.trim().replace(",", "."), question = doubt(input, typed);
    if (question) {
      input.dataset.asked = typed;
      input.classList.add("waiting");
      show(`${input.getAttribute("aria-label")}: ${question}`);
      return;
    }
    keep(input, false);
  });
  window.addEventListener("beforeunload", event => {
    if (cells().some(c => c.value.trim() && c.value.trim() !== c.dataset.was)) event.preventDefault();
  });
})();
