// A scanner types a tag in a burst and ends it with Enter: wherever that happens outside a field, the tag is looked up.
"use strict";
(function () {
  const fastestHandMs = 50, leastLength = 3;
  let burst = "", last = 0;
  document.addEventListener("keydown", function (event) {
    if (event.ctrlKey || event.altKey || event.metaKey || event.target.closest("input, textarea, select, [contenteditable]")) {
      burst = "";
      return;
    }
    const inTime = event.timeStamp - last < fastestHandMs;
    last = event.timeStamp;
    if (event.key.length === 1) {
      burst = (inTime ? burst : "") + event.key;
    } else if (event.key === "Enter" && inTime && burst.length >= leastLength) {
      event.preventDefault();
      window.location.assign("/find?q=" + encodeURIComponent(burst));
      burst = "";
    } else if (event.key !== "Shift") {
      burst = "";
    }
  });
})();
