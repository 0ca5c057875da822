// A button with data-print prints the page on which it stands. Without this script the button is not shown; the browser's own
// command does the same.
"use strict";
document.addEventListener("click", event => {
  if (event.target.closest?.("[data-print]")) window.print();
});
