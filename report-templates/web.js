// The filter of the index. Without it the page shows every sheet.
"use strict";

(function () {
  const form = document.getElementById("filter");
  const count = document.getElementById("count");
  const rows = Array.from(document.querySelectorAll("#sheets tbody tr"));
  const choices = ["brand", "group", "verdict", "year"];
  const field = (name) => document.getElementById(name);

  // Small letters without accents, so that "müsli" is found by "musli".
  const folded = (text) => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  const texts = rows.map((row) => folded(row.cells[0].textContent + " " + row.cells[2].textContent));

  function show() {
    const words = folded(field("words").value).split(/\s+/).filter(Boolean);
    let shown = 0;
    rows.forEach((row, index) => {
      const is = choices.every((name) => !field(name).value || row.dataset[name] === field(name).value);
      row.hidden = !(is && words.every((word) => texts[index].includes(word)));
      shown += row.hidden ? 0 : 1;
    });
    const said = count.dataset.count.replace("{shown}", () => shown).replace("{all}", () => rows.length);
    // What is said again would be read out again.
    if (count.textContent !== said) count.textContent = said;
  }

  form.addEventListener("input", show);
  form.addEventListener("submit", (event) => event.preventDefault());
  // The fields are empty only after the event.
  form.addEventListener("reset", () => setTimeout(show));
  // A browser that goes back fills the fields in again.
  window.addEventListener("pageshow", show);
  form.hidden = false;
  show();
})();
