// A large keypad under a reading's field. The field takes a hardware keyboard too. What is typed must have the decimals of the
// chosen balance, or the group is asked; nothing is ever refused here.
"use strict";
(() => {
  const calx = window.calx = window.calx ?? {};
  const words = ["no decimals", "one decimal", "two decimals", "three decimals", "four decimals", "five decimals"];
  const make = (tag, name, text) => {
    const e = document.createElement(tag);
    if (name) e.className = name;
    if (text !== undefined) e.textContent = text;
    return e;
  };
  calx.make = make;
  calx.text = (e, words) => { if (e && e.textContent !== words) e.textContent = words; };
  calx.show = (e, isShown) => e?.classList.toggle("hidden", !isShown);
  // Words that stand for a moment.
  let saidTimer = 0;
  calx.say = (place, words) => {
    calx.text(place, words);
    clearTimeout(saidTimer);
    saidTimer = setTimeout(() => calx.text(place, ""), 3500);
  };

  const plain = text => text.trim().replace(",", ".").replace("\u2212", "-").replace(/\.$/, "");
  const decimalsOf = text => (text.split(".")[1] ?? "").length;

  // What is asked about a number as typed, or null: with too few decimals the zeros are offered, with too many only a look.
  calx.decimalsQuestion = (typed, decimals) => {
    const has = decimalsOf(typed);
    if (Number.isNaN(decimals) || has === decimals) return null;
    const shows = `Your balance shows ${words[decimals] ?? `${decimals} decimals`}`;
    const whole = has === 0 ? `${typed}.` : typed;
    return has < decimals
      ? { words: `${shows}: ${whole}${"0".repeat(decimals - has)}?`, offered: `${whole}${"0".repeat(decimals - has)}`, yes: "Yes, " }
      : { words: `${shows}. Look again and type all you see.`, offered: typed, yes: "It does show " };
  };

  calx.keypad = (form, settings) => {
    form.noValidate = true;
    const input = form.querySelector(".figure"), send = form.querySelector("button.tall");
    input.setAttribute("inputmode", "none");
    input.value = settings.typed;
    const pad = make("div", "keypad");
    const press = key => {
      const old = input.value;
      input.value = key === "back" ? old.slice(0, -1)
        : key === "-" ? (old.startsWith("-") ? old.slice(1) : `-${old}`)
        : key === "." && old.includes(".") ? old : (old + key).slice(0, 12);
      input.dispatchEvent(new Event("input", { bubbles: true }));
    };
    // A temperature may lie below zero.
    const keys = ["1", "2", "3", "4", "5", "6", "7", "8", "9", ".", "0", "back", ...(form.dataset.unit === "°C" ? ["-"] : [])];
    for (const key of keys) {
      const button = make("button", "key", key === "back" ? "\u232b" : key === "-" ? "\u2212" : key);
      button.type = "button";
      button.setAttribute("aria-label", key === "back" ? "take the last digit back" : key === "." ? "point" : key === "-" ? "minus" : key);
      // The field keeps the focus, so that a keyboard goes on where the keypad stopped.
      button.addEventListener("pointerdown", event => event.preventDefault());
      button.addEventListener("click", () => { press(key); });
      pad.append(button);
    }
    form.insertBefore(pad, send);
    const said = make("p", "fault hidden");
    said.setAttribute("role", "alert");
    form.insertBefore(said, pad);
    const say = text => { said.textContent = text; said.classList.toggle("hidden", !text); };
    input.addEventListener("input", () => { say(""); settings.changed(input.value); });
    for (const field of form.querySelectorAll("[name=balance], [name=vessel]")) {
      field.addEventListener("input", () => { say(""); settings.picked(field.name, field.value); });
    }

    form.addEventListener("submit", event => {
      event.preventDefault();
      const written = plain(input.value);
      if (!/^-?\d+(\.\d+)?$/.test(written)) { say(form.dataset.decimals === undefined && !form.querySelector("[name=balance]") ? "Type the number that you read: digits, with a point." : "Type all that the display shows: digits, with a point."); input.focus(); return; }
      const choice = form.querySelector("[name=balance]:checked");
      if (form.querySelector("[name=balance]") && !choice) { say("Choose the letter of your balance first."); return; }
      const decimals = form.dataset.decimals === undefined ? NaN : Number(choice?.dataset.decimals ?? form.dataset.decimals);
      const question = settings.isAssessed ? null : calx.decimalsQuestion(written, decimals) ?? warm(written);
      const vessel = form.querySelector("[name=vessel]")?.value.trim() || null;
      const give = (number, sure) => settings.send({ written: number, balance: choice?.value ?? null, vessel, sure });
      if (question) ask(question, (number, sure) => {
        const hot = question.isHot ? null : warm(number);
        if (hot) ask(hot, () => give(number, sure)); else give(number, sure && !question.isHot);
      });
      else give(written, false);
    });

    // Asked once while the countdown runs, and never in the way of a second 'Send'.
    function warm(written) {
      if (!settings.isHot()) return null;
      settings.askedHot();
      const words = "The countdown still runs: it may still be hot. Tongs and mat every time; nobody tests by touch.";
      return { words, offered: written, yes: "Send ", no: "Wait for the countdown", isHot: true };
    }

    function ask(question, give) {
      form.querySelector(".doubt")?.remove();
      const box = make("div", "doubt");
      box.setAttribute("role", "alertdialog");
      const title = make("p", "big", question.words);
      title.id = "doubt-words";
      box.setAttribute("aria-labelledby", title.id);
      const yes = make("button", "tall", question.yes + question.offered), again = make("button", "tall second", question.no ?? "Type it again");
      yes.type = again.type = "button";
      yes.addEventListener("click", () => give(question.offered, true));
      again.addEventListener("click", () => {
        box.remove();
        form.classList.remove("asking");
        if (!question.isHot) {
          input.value = "";
          settings.changed("");
        }
        input.focus();
      });
      box.append(title, yes, again);
      form.append(box);
      form.classList.add("asking");
      again.focus();
    }
  };
})();
