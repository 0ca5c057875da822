// The stage: the one thing that a group does now, or is about to type. What stands on it is a copy of a place that the program
// sent; only when something on it is different it is put up anew, so that the focus and what is being typed stay.
"use strict";
(() => {
  const calx = window.calx = window.calx ?? {}, { make, button } = calx;
  const find = (selector, from) => from.querySelector(selector);

  // doing: what the person is doing; acts: what the page does with a reading, and how it goes back or ahead.
  calx.stage = (stage, doing, acts) => {
    let shown = "", coolTimer = 0;

    // from: the group's way as the program sent it, or null to show nothing; entries: what was typed since.
    function render(from, entries) {
      stage.classList.toggle("hidden", !from);
      clearTimeout(coolTimer);
      if (!from) return;
      const way = calx.way(from, entries);
      const typed = doing.again ? "again" : doing.isAhead && way.nextReading ? "ahead" : "";
      const place = typed === "again" ? null : typed === "ahead" ? way.nextReading : way.place;
      const isHot = way.coolAt !== null && way.coolAt > window.calxNow();
      const parts = [], add = part => part && parts.push(part);
      if (acts.isStation) add(make("p", "whose", `Group ${doing.group}`));
      const advice = find("[data-advice]", from);
      if (advice?.children.length && !way.isAhead && !typed) add(advice.cloneNode(true));
      if (way.coolAt !== null && place?.dataset.flame !== "yes") add(cooling(way.coolAt, isHot));
      add(place ? place.cloneNode(true) : readingAgain());
      if (acts.isStation) add(button("Another group", "second tall", acts.back));
      else if (typed) add(button("Back to the step", "plain", acts.back));
      else if (place.dataset.kind === "do" && way.nextReading) {
        add(button(`Type a reading: ${find("h1", way.nextReading).textContent}`, "plain", acts.ahead));
      }
      if (acts.isStation) add(find("[data-sent]", from)?.cloneNode(true));
      if (isHot) coolTimer = setTimeout(acts.render, way.coolAt - window.calxNow() + 200);
      stage.dataset.lit = way.isLit ? "yes" : "no";
      stage.dataset.hot = isHot ? "yes" : "no";
      put(parts, from);
    }

    function cooling(at, isHot) {
      const box = make("div", "cooling");
      const time = new Date(at).toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
      const left = make("strong", "countdown");
      left.dataset.until = String(Math.round(at));
      left.textContent = window.calxLeft(left.dataset.until);
      const care = make("p", "", ` at ${time}. Tongs and mat every time. Nobody tests by touch.`);
      if (isHot) box.append(make("p", "", "Cool enough to weigh in "), left, care);
      else box.append(make("p", "cool", "Cool enough to weigh. Tongs and mat every time."));
      return box;
    }

    function put(parts, from) {
      const cools = parts.some(p => Number(p.dataset.cooling) > 0);
      // Ids and minutes that the page works with, and nobody sees, say nothing about whether it looks different.
      for (const part of parts) {
        for (const id of part.querySelectorAll("input[name=id]")) id.remove();
        part.removeAttribute("data-cooling");
      }
      const look = parts.map(p => p.outerHTML).join("");
      if (look === shown) return;
      const hadFocus = stage.contains(document.activeElement);
      shown = look;
      stage.replaceChildren(...parts);
      const form = find("[data-typing]", stage);
      if (form) typing(form, from, cools);
      if (hadFocus || doing.hasMoved) {
        const target = find(".figure", stage) ?? find("h1", stage);
        if (!target?.matches("input")) target?.setAttribute("tabindex", "-1");
        target?.focus({ preventScroll: true });
      }
      if (doing.hasMoved) window.scrollTo(0, 0);
      doing.hasMoved = false;
    }

    // A reading typed once more has no place on the way before the group any longer: its form is made.
    function readingAgain() {
      const item = doing.again, article = make("article", "place reads");
      article.append(make("h1", "", `${item.state === "warm" ? "Now cool" : "Again"}: ${item.title}`), find("[data-again]", document).content.firstElementChild.cloneNode(true));
      const form = find("form", article);
      const { what, group, trial } = item.entry;
      const [label, unit] = item.title.split("\u00a0/\u00a0");
      Object.assign(form.dataset, { what, group, trial, label, unit: unit ?? form.dataset.unit });
      if (!item.entry.balance) find(".which", form)?.remove();
      // The decimals are those of the balance that is chosen; the form itself knows none.
      delete form.dataset.decimals;
      article.dataset.of = item.entry.id;
      return article;
    }

    function typing(form, from, cools) {
      const own = `${form.dataset.group}.${form.dataset.trial}`, key = `${own}.${form.dataset.what}`;
      if (doing.typedFor !== key) Object.assign(doing, { typed: "", typedFor: key, picked: {} });
      // What was picked stands, though the page is put up anew before it is sent.
      const again = doing.again?.entry;
      const letter = doing.picked.balance ?? again?.balance ?? acts.remembered.balance ?? from.dataset.letter;
      for (const radio of form.querySelectorAll("[name=balance]")) if (radio.value === letter) radio.checked = true;
      const vessel = find("[name=vessel]", form);
      if (vessel) vessel.value = doing.picked.vessel ?? again?.vessel ?? (vessel.value || (acts.remembered[own] ?? ""));
      calx.keypad(form, {
        typed: doing.typed,
        isAssessed: acts.isAssessed,
        isHot: () => stage.dataset.hot === "yes" && doing.hotAsked !== key && !doing.again && cools,
        askedHot: () => { doing.hotAsked = key; },
        changed: value => { doing.typed = value; },
        picked: (name, value) => { doing.picked[name] = value; },
        send: reading => acts.keep(form, reading),
      });
    }

    return { render };
  };
})();
