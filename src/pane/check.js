/*
 * Runs before anything else in the pane, and is written in the oldest language that a browser part of Excel may know: what follows may
 * not even be read there. Says which Excel is needed where this one is too old, and what is the matter where nothing comes for ten
 * seconds, which no program that comes later could. The build puts it into the page.
 */
(function () {
  "use strict";
  var needs = "Pennyacre needs Excel 2021 or later, Microsoft 365, or Excel on the web.";
  var isOver = false;

  /** Puts sentences in place of "Starting"; does nothing once the pane itself is shown. */
  function tell(sentences) {
    var place = document.getElementById("starting");
    if (place === null || isOver) return;
    while (place.children.length > 1) place.removeChild(place.lastElementChild);
    for (var index = 0; index < sentences.length; index += 1) {
      var line = document.createElement("p");
      line.appendChild(document.createTextNode(sentences[index]));
      place.appendChild(line);
    }
    place.setAttribute("role", "alert");
  }

  // All three came with the browsers of early 2022: Safari 15.4 on a Mac, version 98 of what Windows and the web use.
  if (!Object.hasOwn || !Array.prototype.findLast || typeof structuredClone !== "function") {
    tell([
      "The part of this Excel that shows panes is too old for Pennyacre.",
      needs,
      "On a Mac the pane runs in the system's Safari, which must be 15.4 or later: update macOS.",
      "Without Excel, the same pane runs beside a workbook in any browser of today.",
    ]);
    isOver = true;
    document.getElementById("starting").setAttribute("data-too-old", "");
    return;
  }

  function failed(event) {
    var from = event.target && event.target.src;
    // That Office.js is missing is told by the pane's own program, which comes after it.
    if (from && from.indexOf("https://appsforoffice.microsoft.com/") === 0) return;
    if (from) {
      tell(["A part of Pennyacre did not arrive. Check the connection, close the pane and open it again.", from]);
    } else {
      tell(["Pennyacre could not start in this Excel.", needs, String(event.message)]);
    }
  }
  window.addEventListener("error", failed, true);

  setTimeout(function () {
    tell([
      "Nothing has come from Microsoft's server or from Excel for ten seconds. Pennyacre starts as soon as it does.",
      "If it does not: check the connection to the internet, finish the cell or dialog that is open in Excel, or close the pane and " +
        "open it again. Nothing in the workbook has been changed.",
    ]);
  }, 10000);
})();
