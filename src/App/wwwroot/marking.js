// Answers in words by keyboard: a comment's key puts its text in, T goes into the comment and Esc out of it. Numbers, N, P and W
// are pressed by page.js. Without this script every button does the same.
"use strict";
(() => {
  const form = document.querySelector("[data-giving]");
  if (!form) return;
  const comment = form.querySelector("[name=reason]");
  const isTyping = target => target.matches?.("input, textarea, select");

  // A key that is held down marks one answer and not the next ones too.
  window.addEventListener("keydown", event => { if (event.repeat && !isTyping(event.target)) event.stopImmediatePropagation(); }, true);

  form.addEventListener("click", event => {
    const button = event.target.closest("[data-comment]");
    if (!button) return;
    event.preventDefault();
    const put = `${comment.value.trim()} ${button.dataset.comment}`.trim();
    if (put.length <= comment.maxLength) comment.value = put;
  });

  document.addEventListener("keydown", event => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === "Escape" && event.target === comment) comment.blur();
    else if (event.key.toLowerCase() === "t" && !isTyping(event.target)) { event.preventDefault(); comment.focus(); comment.setSelectionRange(comment.value.length, comment.value.length); }
  });

  // What was sent is on its way: a second press sends nothing more.
  form.addEventListener("submit", event => {
    if (event.submitter?.matches("[data-comment]")) return;
    if (form.dataset.sent) event.preventDefault();
    form.dataset.sent = "yes";
  });
  window.addEventListener("pageshow", () => { delete form.dataset.sent; });
})();
