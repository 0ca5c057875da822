// Keys for numbers as they are written in calculations: digits, point, power of ten, minus, ratio, fraction. They stand under the
// question and type into its field, which takes a keyboard of its own too.
"use strict";
(() => {
  const calx = window.calx = window.calx ?? {}, { make } = calx;
  const keys = [
    ["1"], ["2"], ["3"], ["×10", " x 10^", "×10 to the power of"],
    ["4"], ["5"], ["6"], ["\u2212", "-", "minus"],
    ["7"], ["8"], ["9"], [":", " : ", "to, as in a ratio"],
    [".", ".", "point"], ["0"], ["\u232b", null, "take the last sign back"], ["/", "/", "over, as in a fraction"],
  ];

  // field: what the keys type into now, or null.
  calx.answerPad = (pad, field) => {
    const press = typed => {
      const input = field();
      if (!input) return;
      const from = input.selectionStart ?? input.value.length, to = input.selectionEnd ?? from;
      if (typed !== null) input.setRangeText(typed, from, to, "end");
      else {
        // A power of ten goes as a whole, as it came.
        const before = input.value.slice(0, from), back = from < to ? 0 : before.endsWith(" x 10^") ? 6 : before.endsWith(" : ") ? 3 : 1;
        input.setRangeText("", Math.max(0, from - back), to, "end");
      }
      if (input.value.length > input.maxLength) input.value = input.value.slice(0, input.maxLength);
      input.dispatchEvent(new Event("input", { bubbles: true }));
    };
    for (const [shown, typed, label] of keys) {
      const button = make("button", "key", shown);
      button.type = "button";
      if (label) button.setAttribute("aria-label", label);
      // The field keeps the focus, so that a keyboard goes on where the keys stopped.
      button.addEventListener("pointerdown", event => event.preventDefault());
      button.addEventListener("click", () => press(typed === undefined ? shown : typed));
      pad.append(button);
    }
  };
})();
