// Shows a search as it goes on. Without it the page says the same whenever it is loaded again.
"use strict";
document.querySelectorAll("[data-live]").forEach(function (place) {
  const said = document.getElementById(place.dataset.said);
  const told = new EventSource(place.dataset.live);
  let lastSaid = 0;
  told.addEventListener("now", function (event) {
    place.innerHTML = event.data;
    const sentence = place.querySelector("[data-sentence]");
    if (said && sentence && Date.now() - lastSaid > 8000) {   // read aloud now and then, not with every step
      lastSaid = Date.now();
      said.textContent = sentence.textContent;
    }
  });
  told.addEventListener("over", function () {
    told.close();
    location.reload();
  });
  told.addEventListener("full", function () {
    told.close();
  });
});
