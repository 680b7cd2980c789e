namespace Analytics.Acceptance.Browser;

/// <summary>Questions to a page about text that a reader cannot see whole.</summary>
internal static class Layout
{
    /// <summary>
    /// Text that sticks out of the window at a side, or out of a box that cuts it off. Text hidden on purpose
    /// (folded, or kept for screen readers) does not count, nor does what a reader can scroll to.
    /// </summary>
    public const string Clipped = """
        () => {
          const faults = [], width = document.documentElement.clientWidth;
          if (document.documentElement.scrollWidth > width) faults.push("page wider than the window: " + document.documentElement.scrollWidth + " > " + width);
          const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          for (let node = walker.nextNode(); node; node = walker.nextNode()) {
            const element = node.parentElement, text = node.textContent.trim();
            if (!text || element.closest("script,style,title,.skip")) continue;
            if (!element.checkVisibility({ visibilityProperty: true, opacityProperty: true, contentVisibilityAuto: true })) continue;
            const range = document.createRange();
            range.selectNodeContents(node);
            const boxes = Array.from(range.getClientRects()).filter(b => b.width > 1 && b.height > 1);
            if (boxes.length === 0) continue;
            let cut = false, hidden = false;
            for (let box = element; box && box !== document.body; box = box.parentElement) {
              const style = getComputedStyle(box), place = box.getBoundingClientRect();
              if (style.clipPath.startsWith("inset(50%")) { hidden = true; break; }
              const cutsX = style.overflowX === "hidden" || style.overflowX === "clip", cutsY = style.overflowY === "hidden" || style.overflowY === "clip";
              if (style.overflowX === "auto" || style.overflowX === "scroll") break;
              if (box.namespaceURI.endsWith("svg") && box.tagName !== "svg") continue;
              if (cutsX && boxes.some(b => b.left < place.left - 1.5 || b.right > place.right + 1.5)) cut = true;
              if (cutsY && boxes.some(b => b.top < place.top - 3 || b.bottom > place.bottom + 3)) cut = true;
            }
            if (hidden) continue;
            if (!cut && boxes.some(b => b.left < -0.5 || b.right > width + 0.5)) cut = true;
            if (cut) faults.push(text.slice(0, 60) + " <" + element.tagName + " class=" + element.getAttribute("class") + ">");
          }
          return faults;
        }
        """;

    /// <summary>Words of a figure's live drawing that lie on each other.</summary>
    public const string Overlapping = """
        () => {
          const faults = [];
          for (const live of document.querySelectorAll(".fig-live")) {
            if (!live.checkVisibility()) continue;
            const words = Array.from(live.querySelectorAll("text")).filter(t => t.textContent.trim()).map(t => [t.textContent, t.getBoundingClientRect()]);
            for (let i = 0; i < words.length; i++)
              for (let j = i + 1; j < words.length; j++) {
                const [a, p] = words[i], [b, q] = words[j];
                const x = Math.min(p.right, q.right) - Math.max(p.left, q.left), y = Math.min(p.bottom, q.bottom) - Math.max(p.top, q.top);
                if (x > 2 && y > 4) faults.push(a + " | " + b);
              }
          }
          return faults;
        }
        """;
}
