"use strict";
// Keeps ticks and measured sizes in this browser, under the digest of the spec.
(() => {
  const root = document.documentElement;
  const digest = root.dataset.digest;
  const shelf = "binder:" + digest;
  const ours = (name) => document.getElementById("b:" + name);
  const each = (query, act) => document.querySelectorAll(query).forEach(act);

  const ticks = new Set();
  const sizes = new Map();
  let isKept = true;

  const fetchKept = () => {
    try {
      const kept = JSON.parse(localStorage.getItem(shelf) || "{}");
      for (const key of kept.ticks || []) ticks.add(String(key));
      for (const [key, size] of kept.sizes || []) sizes.set(String(key), String(size));
    } catch {
      isKept = false;
    }
  };
  const keep = () => {
    try {
      localStorage.setItem(shelf, JSON.stringify({ ticks: [...ticks], sizes: [...sizes] }));
    } catch {
      isKept = false;
    }
  };

  const record = () => {
    const measured = {};
    each("[data-blank]", (field) => {
      const { blank, unit } = field.dataset;
      if (sizes.has(blank)) measured[blank] = { size: sizes.get(blank), unit };
    });
    return JSON.stringify({ spec: digest, ticks: [...ticks].sort(), sizes: measured }, null, 1);
  };

  // The same tick or size may stand on several leaves: all of them show the one value.
  const show = () => {
    each("[data-tick]", (box) => { box.checked = ticks.has(box.dataset.tick); });
    each("[data-blank]", (field) => {
      const size = sizes.get(field.dataset.blank) || "";
      if (field.value !== size) field.value = size;
    });
    each("[data-follows]", (figure) => {
      const { follows, add } = figure.dataset;
      const size = parseFloat((sizes.get(follows) || "").replace(",", "."));
      const places = figure.dataset.unit === "in" ? 4 : 3;
      figure.textContent = Number.isFinite(size) ? (size + Number(add)).toFixed(places) : "____";
    });
    const boxes = new Set();
    each("[data-tick]", (box) => boxes.add(box.dataset.tick));
    const done = [...boxes].filter((key) => ticks.has(key)).length;
    ours("state").textContent =
      `${done} of ${boxes.size} ticked, ${sizes.size} sizes written. ` +
      (isKept ? "They stay in this browser." : "This browser keeps nothing: save before closing.");
    ours("text").value = record();
  };

  const changed = () => { keep(); show(); };

  each("[data-tick]", (box) => box.addEventListener("change", () => {
    if (box.checked) ticks.add(box.dataset.tick); else ticks.delete(box.dataset.tick);
    changed();
  }));
  each("[data-blank]", (field) => field.addEventListener("input", () => {
    if (field.value) sizes.set(field.dataset.blank, field.value);
    else sizes.delete(field.dataset.blank);
    changed();
  }));

  ours("show").addEventListener("click", () => {
    const panel = ours("record");
    panel.hidden = !panel.hidden;
    ours("show").setAttribute("aria-expanded", String(!panel.hidden));
  });
  ours("save").addEventListener("click", () => {
    const link = ours("save");
    if (link.href) URL.revokeObjectURL(link.href);
    link.href = URL.createObjectURL(new Blob([record()], { type: "application/json" }));
    link.download = `bench-${digest.slice(0, 10)}.json`;
  });
  ours("clear").addEventListener("click", () => {
    if (!confirm("Clear all ticks and sizes of this binder?")) return;
    ticks.clear();
    sizes.clear();
    changed();
  });

  const wordsOf = (place) => place.matches("tr")
    ? [...place.cells].slice(0, 3).map((cell) => cell.textContent.trim()).join(" · ")
    : place.textContent.trim();
  const places = [...document.querySelectorAll("[data-find][id]")]
    .map((place) => ({ id: place.id, words: wordsOf(place) }));

  ours("find").addEventListener("input", () => {
    const wanted = ours("find").value.trim().toLowerCase();
    const found = wanted
      ? places.filter((place) => place.words.toLowerCase().includes(wanted)).slice(0, 12)
      : [];
    ours("found").replaceChildren(...found.map((place) => {
      const link = document.createElement("a");
      link.href = "#" + place.id;
      link.textContent = place.words;
      const line = document.createElement("li");
      line.append(link);
      return line;
    }));
    ours("found").hidden = found.length === 0;
  });
  ours("found").addEventListener("click", () => { ours("found").hidden = true; });

  fetchKept();
  show();
  ours("bench").hidden = false;
})();
