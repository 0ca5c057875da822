// What lies on this device: what waits to be sent, what was not taken and why, and the question about a reading.
"use strict";
(() => {
  const calx = window.calx = window.calx ?? {}, make = calx.make;
  const button = (text, look, pressed) => {
    const b = make("button", look, text);
    b.type = "button";
    b.addEventListener("click", pressed);
    return b;
  };
  calx.button = button;

  function list(title, items, more) {
    const part = document.createDocumentFragment();
    if (items.length === 0) return part;
    part.append(make("h2", "", title));
    const rows = make("ul", "readings");
    for (const item of items) {
      const row = make("li");
      row.append(make("span", "name", item.label));
      more?.(row, item);
      rows.append(row);
    }
    part.append(rows);
    return part;
  }

  let looked = "";

  // The lists, under 'Sent'.
  calx.mine = (place, queue, again) => {
    const waiting = queue.waiting(), held = queue.held(), refused = queue.refused(), aside = queue.aside();
    const look = JSON.stringify([waiting, held, refused, aside].map(items => items.map(i => i.key)));
    if (look === looked) return;
    looked = look;
    place.replaceChildren(
      list("Waits to be sent", waiting),
      list("Not taken", refused, (row, item) => {
        row.append(make("p", "fault", item.reason ?? ""));
        if (item.entry.kind === (queue.retypes ?? "reading")) row.append(button("Type it again", "second", () => again(item)));
        row.append(button("Put aside", "plain", () => queue.set(item, { state: "aside" })));
      }),
      list("Typed for another group", held, (row, item) => {
        row.append(make("small", "", `For group ${item.entry.group}. It is sent when this device types for that group.`));
      }),
    );
    if (aside.length > 0) {
      const drawer = make("details", "aside");
      drawer.append(make("summary", "", "Put aside on this device"), list("Not taken, and put aside", aside));
      place.append(drawer);
    }
    place.classList.toggle("hidden", place.childElementCount === 0);
  };

  // What was not taken stands before everything else until somebody has seen it: the page would else go on as if it counted.
  calx.refusal = (place, item, queue, again) => {
    if (!item) { place.classList.add("hidden"); delete place.dataset.of; return; }
    if (place.dataset.of === item.entry.id) return;
    place.dataset.of = item.entry.id;
    const words = make("h1", "", "Not taken");
    words.id = "refused-words";
    place.replaceChildren(words, make("p", "big", item.label), make("p", "fault", item.reason ?? ""));
    // A correction that was passed on is in the teacher's hands; anything else can be typed once more.
    if (item.entry.kind === (queue.retypes ?? "reading") && !item.entry.replaces) place.append(button("Type it again", "tall", () => again(item)));
    place.append(button("We have read this", "tall second", () => queue.set(item, { state: "aside" })));
    place.classList.remove("hidden");
    place.querySelector("button").focus();
  };

  // The question about a reading, asked once. It never says whether anything is odd.
  calx.question = (place, item, queue, again) => {
    if (!item) { place.classList.add("hidden"); delete place.dataset.of; return; }
    if (place.dataset.of === item.entry.id) return;
    place.dataset.of = item.entry.id;
    const words = make("h1", "", item.ask);
    words.id = "ask-words";
    const { group, trial, what } = item.entry;
    place.replaceChildren(
      words,
      make("p", "big", `You sent ${item.label}.`),
      button("It is right", "tall", () => {
        queue.remove(item);
        queue.add({ kind: "happening", what: "looked-again", text: what, group, trial }, `Looked again: ${item.label}`);
      }),
      button("Type it again", "tall second", () => again(item)),
    );
    place.classList.remove("hidden");
    place.querySelector("button").focus();
  };
})();
