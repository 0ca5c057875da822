// What every page can do. A part of a page with data-live is fetched anew when the lesson moves on; a form with data-ask asks
// before it is sent; a select or form with data-send is sent when it is changed. Without this script every page still
// reads and every form still works.
"use strict";
(() => {
  const parts = () => [...document.querySelectorAll("[data-live]")];
  let fetching = false, again = false;

  // Puts new content in the place of old, child by child where both have a key, so that what has not changed is left alone:
  // an open drawer stays open and a field keeps what is being typed in it.
  function put(old, fresh) {
    if (old.isEqualNode(fresh)) return;
    const keep = old.contains(document.activeElement) && document.activeElement.matches("input, textarea, select");
    const keyed = [...fresh.children].every(c => c.dataset.key) && fresh.children.length > 0;
    if (!keyed) {
      if (keep && old.dataset.live === undefined) return;
      const open = [...old.querySelectorAll("details[open][id]")].map(d => d.id);
      old.replaceChildren(...fresh.childNodes);
      open.forEach(id => document.getElementById(id)?.setAttribute("open", ""));
      return;
    }
    const before = new Map([...old.children].filter(c => c.dataset.key).map(c => [c.dataset.key, c]));
    const next = [...fresh.children].map(c => {
      const known = before.get(c.dataset.key);
      if (!known) return c;
      if (!known.isEqualNode(c)) {
        const focused = known.contains(document.activeElement) && document.activeElement.matches("input, textarea, select");
        if (!focused) {
          const open = [...known.querySelectorAll("details[open]")].map(d => d.id);
          for (const a of [...known.attributes]) if (!c.hasAttribute(a.name)) known.removeAttribute(a.name);
          for (const a of c.attributes) known.setAttribute(a.name, a.value);
          known.replaceChildren(...c.childNodes);
          open.forEach(id => id && document.getElementById(id)?.setAttribute("open", ""));
        }
      }
      return known;
    });
    const same = next.length === old.children.length && next.every((n, i) => n === old.children[i]);
    if (!same) {
      const active = document.activeElement;
      old.replaceChildren(...next);
      if (active && old.contains(active)) active.focus();
    }
  }

  async function refresh() {
    if (fetching) { again = true; return; }
    fetching = true;
    try {
      for (const part of parts()) {
        const answer = await fetch(part.dataset.live, { headers: { Accept: "text/html" } });
        if (!answer.ok) continue;
        const page = new DOMParser().parseFromString(await answer.text(), "text/html");
        const fresh = page.querySelector("[data-live]");
        if (fresh) { put(part, fresh); part.dispatchEvent(new CustomEvent("refreshed", { bubbles: true })); }
      }
      told(true);
    } catch { told(false); }
    fetching = false;
    if (again) { again = false; refresh(); }
  }

  // Says on the page whether it hears from the program.
  function told(connected) {
    document.body.dataset.connected = connected ? "yes" : "no";
    for (const e of document.querySelectorAll("[data-connection]")) {
      const text = connected ? "" : "No connection. This page shows what it last heard.";
      if (e.textContent !== text) e.textContent = text;
    }
  }

  const stream = document.querySelector("[data-stream]");
  if (stream && "EventSource" in window) {
    let source;
    const listen = () => {
      source?.close();
      source = new EventSource(stream.dataset.stream);
      source.addEventListener("changed", refresh);
      source.addEventListener("beat", refresh);
      source.addEventListener("open", () => told(true));
      source.addEventListener("error", () => {
        told(false);
        if (source.readyState === EventSource.CLOSED) setTimeout(listen, 3000);
      });
    };
    listen();
    window.addEventListener("online", listen);
    document.addEventListener("calx:kept", refresh);
  }

  document.addEventListener("submit", event => {
    const asked = event.target.dataset.ask;
    if (asked && !window.confirm(asked)) event.preventDefault();
  });
  document.addEventListener("change", event => {
    const form = event.target.closest("form[data-send]");
    if (form) form.requestSubmit();
  });

  // One key each for what must go at once; never while somebody types.
  document.addEventListener("keydown", event => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.target.matches("input, textarea, select")) return;
    const target = document.querySelector(`[data-key-press="${CSS.escape(event.key.toLowerCase())}"]`);
    if (target) { event.preventDefault(); target.click(); }
  });

  // Minutes and seconds until or since a moment, by the clock of the program and not of this device.
  const offset = Number(document.querySelector("meta[name=calx-now]")?.content ?? Date.now()) - Date.now();
  window.calxNow = () => Date.now() + offset;
  const secondsTo = until => Math.max(0, Math.ceil((Number(until) - window.calxNow()) / 1000));
  window.calxLeft = until => `${Math.floor(secondsTo(until) / 60)}:${String(secondsTo(until) % 60).padStart(2, "0")}`;
  function tick() {
    for (const e of document.querySelectorAll("[data-until]")) {
      const text = window.calxLeft(e.dataset.until);
      if (e.textContent !== text) e.textContent = text;
      if (secondsTo(e.dataset.until) === 0 && e.dataset.over !== "yes") { e.dataset.over = "yes"; refresh(); }
    }
    for (const e of document.querySelectorAll("[data-since]")) {
      const text = String(Math.max(0, Math.floor((window.calxNow() - Number(e.dataset.since)) / 60000)));
      if (e.textContent !== text) e.textContent = text;
    }
  }
  setInterval(tick, 500);
  tick();
})();
