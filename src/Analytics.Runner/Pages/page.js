"use strict";
(function () {
  const root = document.documentElement;

  // A link to folded text unfolds it.
  function unfold() {
    const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
    for (let d = target && target.closest("details"); d; d = d.parentElement.closest("details")) d.open = true;
    if (target) target.scrollIntoView();
  }
  addEventListener("hashchange", unfold);
  if (location.hash) unfold();

  // What scrolls sideways must be reachable without a mouse.
  for (const box of document.querySelectorAll(".scroll"))
    if (box.scrollWidth > box.clientWidth) box.tabIndex = 0;

  // The data of the charts, once they are unpacked.
  let specs = [];

  // The chart library and the data of the charts travel as pairs of digits to base 91, 13 bits a pair, over gzip.
  function unpack(text) {
    const gap = text.indexOf(" ");
    const bytes = new Uint8Array(Number(text.slice(0, gap)));
    const digit = c => (c === 126 ? 60 : c) - 35;
    let held = 0, bits = 0, at = 0;
    for (let i = gap + 1; i + 1 < text.length; i += 2) {
      held |= (digit(text.charCodeAt(i)) * 91 + digit(text.charCodeAt(i + 1))) << bits;
      for (bits += 13; bits > 7; bits -= 8) {
        if (at < bytes.length) bytes[at++] = held & 255;
        held >>>= 8;
      }
    }
    if (bits > 0 && at < bytes.length) bytes[at] = held & 255;
    return bytes;
  }

  function unzip(packed) {
    const zipped = new Blob([unpack(packed.textContent)]).stream();
    return new Response(zipped.pipeThrough(new DecompressionStream("gzip"))).text();
  }

  async function load() {
    const packed = document.getElementById("chart-library");
    const script = document.createElement("script");
    script.textContent = await unzip(packed);
    document.head.append(script);
    packed.remove();
    const all = await unzip(document.getElementById("chart-data"));
    specs = all.split("\u001e").slice(1);
  }

  // The look of every chart; what a chart says itself comes before it.
  const axis = { automargin: true, zeroline: false, gridcolor: "#dfe4ea", title: { standoff: 8 } };
  const template = {
    layout: {
      font: { family: getComputedStyle(document.body).fontFamily, size: 13, color: "#18212b" },
      paper_bgcolor: "rgba(0,0,0,0)", plot_bgcolor: "rgba(0,0,0,0)",
      colorway: ["#0072b2", "#d55e00", "#009e73", "#cc79a7", "#56b4e9", "#e69f00", "#4d5866"],
      margin: { l: 8, r: 12, t: 12, b: 8, pad: 2 },
      hovermode: "closest", dragmode: false,
      hoverlabel: { bgcolor: "#18212b", bordercolor: "#18212b", font: { color: "#fff" }, align: "left", namelength: -1 },
      legend: { orientation: "h", x: 0, y: 1.02, yanchor: "bottom" },
      xaxis: axis, yaxis: axis
    }
  };
  const config = { displayModeBar: false, displaylogo: false, responsive: true, scrollZoom: false, showTips: false };

  // Arrow keys walk through the points, so that what hovering tells is told without a mouse, and aloud.
  function listenToKeys(figure, live, traces) {
    const said = document.createElement("p");
    said.className = "fig-said";
    said.setAttribute("aria-live", "polite");
    figure.append(said);
    const size = t => Math.max((t.x || []).length, (t.y || []).length);
    const stops = traces.map((t, i) => ({ i, n: t.hoverinfo === "skip" || t.visible === false ? 0 : size(t) })).filter(s => s.n > 0);
    let at = 0, point = -1, timer = 0;
    live.addEventListener("keydown", event => {
      const step = { ArrowRight: [0, 1], ArrowLeft: [0, -1], ArrowDown: [1, 0], ArrowUp: [-1, 0] }[event.key];
      if (event.key === "Escape") Plotly.Fx.unhover(live);
      if (!step || stops.length === 0) return;
      event.preventDefault();
      at = (at + step[0] + stops.length) % stops.length;
      point = step[0] ? 0 : (point + step[1] + stops[at].n) % stops[at].n;
      Plotly.Fx.hover(live, [{ curveNumber: stops[at].i, pointNumber: point }]);
      // The label is drawn up to 50 ms later when keys follow each other quickly.
      clearTimeout(timer);
      timer = setTimeout(() => {
        said.textContent = Array.from(live.querySelectorAll(".hoverlayer text"), t => t.textContent).join(", ");
      }, 80);
    });
  }

  const part = (figure, name) => figure.querySelector(".fig-" + name);

  function show(figure, live) {
    part(figure, "live").hidden = !live;
    part(figure, "static").hidden = live;
  }

  // A figure may say below which width of the window its still picture reads better.
  const isWide = figure => innerWidth >= Number(figure.dataset.liveMin || 0);

  async function draw(figure) {
    const live = part(figure, "live"), height = part(figure, "static").offsetHeight;
    try {
      const data = part(figure, "data");
      const spec = JSON.parse(data.textContent || specs[Number(data.dataset.at)]);
      show(figure, true);
      const layout = Object.assign({ height: Math.max(height, 220) }, spec.layout, { template, autosize: true });
      delete layout.width;
      await Plotly.newPlot(live, spec.data, layout, Object.assign({}, config, spec.config));
      const caption = figure.querySelector("figcaption");
      live.tabIndex = 0;
      live.setAttribute("role", "group");
      live.setAttribute("aria-roledescription", "chart");
      live.setAttribute("aria-label", (caption ? caption.textContent.trim() + ". " : "") + "Arrow keys go from point to point.");
      for (const svg of live.querySelectorAll("svg")) svg.setAttribute("aria-hidden", "true");
      listenToKeys(figure, live, spec.data);
      figure.dataset.drawn = "true";
    } catch (error) {
      show(figure, false);
      figure.dataset.drawn = "false";
      console.error(error);
    }
  }

  const pause = () => new Promise(go => setTimeout(go));
  const figures = Array.from(document.querySelectorAll(".fig")).filter(f => part(f, "data") && part(f, "live"));

  async function arrange() {
    for (const figure of figures) {
      if (isWide(figure) && !figure.dataset.drawn) {
        await pause();
        await draw(figure);
      } else if (figure.dataset.drawn === "true") {
        show(figure, isWide(figure));
        if (isWide(figure)) Plotly.Plots.resize(part(figure, "live"));
      }
    }
  }

  async function start() {
    try {
      if (figures.length > 0 && document.getElementById("chart-library")) {
        await load();
        await arrange();
        let timer = 0;
        addEventListener("resize", () => {
          clearTimeout(timer);
          timer = setTimeout(arrange, 150);
        });
      }
    } finally {
      root.dataset.ready = "true";
    }
  }

  start();
})();
