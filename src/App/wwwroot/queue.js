// What was typed waits here until the program says that it has it. Each entry lies in the browser's storage under a key of its
// own, so that a reload, a flat battery or a second tab loses and doubles nothing; its id is drawn once, here, and by it the
// program knows an entry that it is sent twice.
"use strict";
(() => {
  const calx = window.calx = window.calx ?? {};
  const noPlace = "This device has no place in the lesson any more. What waits is kept here: join again with the code, and it is sent.";
  const most = 50, patience = 12000, pauses = [1000, 2000, 4000, 8000, 15000];

  // The browser's storage, or the page's own memory where it is forbidden or full.
  class Shelf {
    constructor(prefix) {
      this.prefix = prefix;
      this.memory = new Map();
      try {
        localStorage.setItem(`${prefix}try`, "1");
        localStorage.removeItem(`${prefix}try`);
        this.isKept = true;
      } catch { this.isKept = false; }
    }
    keys() {
      const keys = new Set(this.memory.keys());
      try {
        for (let i = 0; i < localStorage.length; i++) if (localStorage.key(i).startsWith(this.prefix)) keys.add(localStorage.key(i));
      } catch { this.isKept = false; }
      return [...keys].sort();
    }
    get(key) {
      if (this.memory.has(key)) return this.memory.get(key);
      try { return JSON.parse(localStorage.getItem(key)); } catch { return null; }
    }
    put(key, value) {
      try {
        localStorage.setItem(key, JSON.stringify(value));
        this.memory.delete(key);
      } catch {
        this.isKept = false;
        this.memory.set(key, value);
      }
    }
    remove(key) {
      this.memory.delete(key);
      try { localStorage.removeItem(key); } catch { /* Nothing was there. */ }
    }
  }

  class Queue {
    constructor(lesson, device, group, address, changed) {
      Object.assign(this, { lesson, device, group, address, changed });
      this.shelf = new Shelf(`calx.${lesson}.`);
      this.taken = [];
      this.trouble = "";
      this.isConnected = navigator.onLine !== false;
      this.failures = 0;
      this.last = 0;
      const soon = () => { this.failures = 0; this.flush(); };
      window.addEventListener("online", soon);
      window.addEventListener("pageshow", soon);
      window.addEventListener("offline", () => { this.isConnected = false; changed(); });
      document.addEventListener("visibilitychange", () => { if (!document.hidden) soon(); });
      window.addEventListener("storage", () => changed());
    }

    // Whether the browser keeps what waits when the page is closed.
    get isKept() { return this.shelf.isKept; }

    // Everything of this lesson on this device, in the order in which it was typed, also what it typed under an older seat.
    items() {
      return this.shelf.keys().filter(k => k.split(".")[3] === "e").map(key => ({ key, ...this.shelf.get(key) })).filter(i => i.entry?.id);
    }
    // What was typed for another group stays: sending it from here would put it into the wrong table.
    isOwn(item) { return this.group === 0 || item.entry.group === this.group; }
    waiting() { return this.items().filter(i => i.state === "waiting" && this.isOwn(i)); }
    held() { return this.items().filter(i => i.state === "waiting" && !this.isOwn(i)); }
    refused() { return this.items().filter(i => i.state === "refused"); }
    aside() { return this.items().filter(i => i.state === "aside"); }
    asked() { return this.items().filter(i => i.state === "asked" && this.isOwn(i)); }
    // What the page shows although the program's own list does not show it yet.
    local() { return [...this.taken, ...this.waiting().map(i => i.entry)].sort((a, b) => a.typedAt < b.typedAt ? -1 : 1); }
    // The program's list shows these now.
    shown(ids) { this.taken = this.taken.filter(e => !ids.has(e.id)); }

    static draw() {
      for (;;) {
        const id = [...crypto.getRandomValues(new Uint8Array(16))].map(b => b.toString(16).padStart(2, "0")).join("");
        if (/[^0]/.test(id)) return id;
      }
    }

    add(entry, label, title) {
      this.last = Math.max(Math.round(window.calxNow()), this.last + 1);
      const whole = { id: Queue.draw(), typedAt: new Date(this.last).toISOString(), ...entry };
      const key = `calx.${this.lesson}.${this.device}.e.${String(this.last).padStart(15, "0")}.${whole.id}`;
      this.shelf.put(key, { state: "waiting", label, title: title ?? label, entry: whole });
      this.failures = 0;
      this.changed();
      this.flush();
      return whole;
    }
    set(item, change) { const { key, ...rest } = item; this.shelf.put(key, { ...rest, ...change }); this.changed(); }
    remove(item) { this.shelf.remove(item.key); this.changed(); }

    // The program was heard of by another way: what waits goes at once.
    heard() {
      this.isConnected = true;
      if (this.waiting().length) this.flush();
    }

    async flush() {
      clearTimeout(this.timer);
      if (this.isSending) { this.isAgain = true; return; }
      this.isSending = true;
      // Where the browser has locks, one tab sends at a time; where not, the ids make a second sending harmless.
      try {
        if (navigator.locks) await navigator.locks.request(`calx.${this.lesson}`, () => this.sendAll()); else await this.sendAll();
      } finally { this.isSending = false; }
      if (this.isAgain) { this.isAgain = false; this.flush(); }
    }

    async sendAll() {
      let size = most;
      for (let batch = this.waiting(); batch.length > 0; batch = this.waiting()) {
        const sent = batch.slice(0, size);
        const went = await this.send(sent);
        if (went === "smaller" && size > 1) { size = 1; continue; }
        if (went === "smaller") this.set(sent[0], { state: "refused", reason: this.trouble || "The program did not understand it." });
        if (went === "later") { this.later(); return; }
        this.failures = 0;
      }
    }

    later() {
      this.timer = setTimeout(() => this.flush(), pauses[Math.min(this.failures++, pauses.length - 1)]);
      this.changed();
    }

    async send(items) {
      const stop = new AbortController(), clock = setTimeout(() => stop.abort(), patience);
      try {
        const answer = await fetch(this.address, {
          method: "POST", signal: stop.signal, headers: { "Content-Type": "application/json" },
          body: JSON.stringify({ entries: items.map(i => i.entry) }),
        });
        this.isConnected = true;
        const said = await answer.json().catch(() => null);
        if (answer.ok && Array.isArray(said?.results)) return this.take(items, said.results);
        this.trouble = said?.sentence ?? said?.results?.[0]?.reason ?? "";
        if (answer.status === 403 && said?.title !== "Not opened") this.trouble = noPlace;
        return answer.status === 400 || answer.status === 413 ? "smaller" : "later";
      } catch {
        this.isConnected = false;
        return "later";
      } finally { clearTimeout(clock); }
    }

    // An entry leaves the queue only when the answer names it.
    take(items, results) {
      const byId = new Map(results.map(r => [r.id, r]));
      const labels = [];
      let any = false;
      for (const item of items) {
        const result = byId.get(item.entry.id);
        if (!result) continue;
        any = true;
        if (result.result === "refused") { this.set(item, { state: "refused", reason: result.reason }); continue; }
        this.taken.push(item.entry);
        labels.push(item.label);
        const isAsked = result.ask && !item.entry.sure;
        if (isAsked) this.set(item, { state: "asked", ask: result.ask }); else this.remove(item);
      }
      this.trouble = "";
      if (any) document.dispatchEvent(new CustomEvent("calx:kept", { detail: labels }));
      return any ? "sent" : "later";
    }
  }

  calx.Queue = Queue;
})();
