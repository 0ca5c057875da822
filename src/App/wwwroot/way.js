// Where a group stands on its way: the program's word for it, and on top of that what was typed since and is still on its way.
"use strict";
(() => {
  const calx = window.calx = window.calx ?? {};

  calx.way = (section, entries) => {
    const places = [...section.querySelectorAll(":scope > .place")];
    const is = (i, name) => places[i]?.dataset[name] === "yes";
    const find = (from, wanted) => places.findIndex((p, i) => i >= from && wanted(p, i));
    const at = { index: 0, isLit: section.dataset.lit === "yes", coolAt: Number(section.dataset.cool) || null, isAhead: false, isBack: false, backTo: -1 };
    const flameFrom = from => find(from, (p, i) => is(i, "flame") || p.dataset.reading);
    const behindFlame = from => {
      let i = flameFrom(from);
      if (!is(i, "flame")) return -1;
      while (is(i, "flame")) i++;
      return i;
    };
    const cool = (i, typedAt) => {
      const minutes = Number(places[i]?.dataset.cooling);
      at.coolAt = minutes > 0 ? Date.parse(typedAt) + minutes * 60000 : null;
      at.isLit = false;
    };
    // A tap on 'Flame out' that was wrong is taken back: the group is where it was, or, where the program has gone on since, at its flame.
    const heatsOn = () => {
      if (at.coolAt === null) return false;
      if (at.backTo >= 0) at.index = at.backTo;
      else if (flameFrom(0) >= 0 && is(flameFrom(0), "flame")) return false;
      else at.isBack = true;
      Object.assign(at, { isLit: true, coolAt: null, backTo: -1, isAhead: true });
      return true;
    };
    const go = i => { if (i >= 0) { at.index = i; at.isAhead = true; } };

    for (const e of entries) {
      if (e.kind === "reading" && !e.replaces) {
        const i = find(at.index, p => p.dataset.reading === e.what);
        if (i >= 0) { go(i + 1); Object.assign(at, { coolAt: null, isLit: false, isBack: false, backTo: -1 }); }
      } else if (e.what === "flame-on") {
        if (heatsOn()) continue;
        const i = flameFrom(at.index);
        if (is(i, "flame")) { go(i); at.isLit = true; at.coolAt = null; }
      } else if (e.what === "flame-out") {
        const i = at.isBack ? at.index : behindFlame(at.index);
        if (i >= 0) { if (!at.isBack) at.backTo = at.index; at.isBack = false; go(i); cool(i, e.typedAt); }
      } else if (e.what === "at-step") {
        const i = find(at.index, p => p.dataset.step === e.text && p.dataset.kind !== "decide");
        const behind = behindFlame(at.index);
        if (i >= 0 && behind >= 0 && i >= behind && at.coolAt === null) cool(behind, e.typedAt);
        go(i);
      } else if (e.what === "decided" && places[at.index]?.dataset.kind === "decide") {
        go(e.text === "reheat" ? at.index + 1 : find(at.index + 1, p => p.dataset.heating === "0" && p.dataset.kind !== "decide"));
      }
    }
    at.index = Math.min(at.index, places.length - 1);
    at.place = (at.isBack ? section.querySelector("template[data-back]")?.content.firstElementChild : null) ?? places[at.index] ?? null;
    at.nextReading = places.find((p, i) => i > at.index && p.dataset.reading) ?? null;
    return at;
  };
})();
