// The number pad: keys for gloves that type into the field above. Without this the pad stays hidden and the field is typed into.
"use strict";
document.querySelectorAll(".pad").forEach(function (pad) {
  const field = document.getElementById(pad.dataset.for);
  field.setAttribute("inputmode", "none");
  pad.hidden = false;
  pad.addEventListener("click", function (event) {
    const key = event.target.closest("button");
    if (!key) {
      return;
    }
    const from = field.selectionStart ?? field.value.length;
    const to = field.selectionEnd ?? from;
    if (key.dataset.back) {
      field.setRangeText("", from === to ? Math.max(0, from - 1) : from, to, "end");
    } else {
      field.setRangeText(key.dataset.key, from, to, "end");
    }
  });
});
