// What every screen must be, as questions to an open page. Each answers with a list of complaints, empty when all is well.

import axe from 'axe-core';

/** Rules that axe leaves off unless asked: contrast of 7:1, and targets that are not too small or too near. */
const ASKED_FOR = { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } };

/** Every rule of axe-core, with the name of each place that breaks it. */
export async function accessibility(page) {
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate((rules) => window.axe.run(document, { rules }), ASKED_FOR);
  return violations.flatMap(({ id, help, nodes }) => nodes.map((node) => `${id}: ${help}: ${node.target.join(' ')}`));
}

/** Everything that can be tapped is at least this large both ways, in CSS pixels, and nothing lies over it. */
export async function targets(page, { least = 48, within = 'body' } = {}) {
  return page.evaluate(
    ({ least, within }) => {
      const TAPPED = 'a[href], button, input:not([type=hidden]), select, textarea, summary, [role=button]';
      const complaints = [];
      for (const element of document.querySelectorAll(`:is(${within}) :is(${TAPPED})`)) {
        // A box to tick, or a file to choose, is tapped by its label.
        const label = element.matches('[type=checkbox], [type=radio], [type=file]') ? element.labels[0] : undefined;
        const tapped = label ?? element;
        if (!tapped.checkVisibility({ visibilityProperty: true })) continue;
        tapped.scrollIntoView({ block: 'center', behavior: 'instant' });
        const box = tapped.getBoundingClientRect();
        // Shrunk to a dot, it is there for screen readers only, or until it has the focus.
        if (box.width <= 1 && box.height <= 1) continue;
        const name = `${element.tagName.toLowerCase()} “${(tapped.innerText || tapped.ariaLabel || tapped.name || '').trim()}”`;
        if (box.width < least - 0.5 || box.height < least - 0.5) {
          complaints.push(`${name} is ${Math.round(box.width)} × ${Math.round(box.height)}, not ${least}`);
        }
        const top = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
        if (top && !tapped.contains(top)) complaints.push(`${name} lies under a ${top.tagName.toLowerCase()}`);
      }
      scrollTo(0, 0);
      return complaints;
    },
    { least, within },
  );
}

/** All text that is seen is at least this high, in CSS pixels. */
export async function text(page, { least = 15, within = 'body' } = {}) {
  return page.evaluate(
    ({ least, within }) => {
      const complaints = [];
      for (const root of document.querySelectorAll(within)) {
        const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
        while (walker.nextNode()) {
          const words = walker.currentNode.data.trim();
          const holder = walker.currentNode.parentElement;
          if (!words || holder.closest('script, style') || !holder.checkVisibility({ visibilityProperty: true })) continue;
          // Letters in a drawing grow and shrink with it, however they are turned.
          const drawn = holder instanceof SVGGraphicsElement ? holder.getScreenCTM() : { c: 0, d: 1 };
          const scale = Math.hypot(drawn.c, drawn.d);
          const size = Math.round(Number.parseFloat(getComputedStyle(holder).fontSize) * scale * 10) / 10;
          if (size < least) complaints.push(`“${words.slice(0, 40)}” is ${size} px, not ${least}`);
        }
      }
      return complaints;
    },
    { least, within },
  );
}

/** The page is no wider than the screen. */
export async function width(page) {
  const { wide, screen } = await page.evaluate(() => ({
    wide: document.documentElement.scrollWidth,
    screen: document.documentElement.clientWidth,
  }));
  return wide > screen ? [`the page is ${wide} wide on a screen of ${screen}`] : [];
}

/** All that can be tapped is reached with the Tab key, and shows that it has been. */
export async function keyboard(page) {
  const waiting = await page.evaluate(() => {
    const CHOSEN = 'a[href], button, input:not([type=hidden]), select, textarea, summary, [role=button]';
    const seen = [...document.querySelectorAll(CHOSEN)].filter((element) => element.checkVisibility() && !element.disabled);
    document.activeElement?.blur();
    return seen.map((element, at) => {
      element.dataset.stop = at;
      const name = (element.innerText || element.ariaLabel || element.name || '').trim();
      // Of a group of radio buttons only one is a stop: the arrow keys go on from there.
      return { at, name, group: element.type === 'radio' ? element.name : undefined };
    });
  });
  const reached = new Set();
  const complaints = [];
  // A field for a day is a stop for each of its parts: day, month, year, and the calendar.
  const parts = await page.evaluate(() => 3 * document.querySelectorAll('input[type=date]').length);
  for (let press = 0; press <= waiting.length + parts; press++) {
    await page.keyboard.press('Tab');
    const stop = await page.evaluate(() => {
      const element = document.activeElement;
      if (element?.dataset.stop === undefined) return undefined;
      const shown = [element, element.labels?.[0]].some((shown) => {
        const style = shown && getComputedStyle(shown);
        return style && ((style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) > 0) || style.boxShadow !== 'none');
      });
      return { at: Number(element.dataset.stop), shown };
    });
    if (!stop || reached.has(stop.at)) continue;
    reached.add(stop.at);
    if (!stop.shown) complaints.push(`“${waiting[stop.at].name}” does not show that it has the focus`);
  }
  const groups = new Set([...reached].map((at) => waiting[at].group));
  for (const { at, name, group } of waiting) {
    if (!reached.has(at) && !(group && groups.has(group))) complaints.push(`“${name}” is not reached with the Tab key`);
  }
  return complaints;
}
