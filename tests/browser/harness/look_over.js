// One look over one screen: a picture of it, and every check.

import assert from 'node:assert/strict';
import * as checks from './checks.js';
import { LYING, picture } from './phone.js';

/** Screens that are used on the ladder, in gloves, in the sun. */
export const ON_THE_LADDER = { target: 72, text: 24 };
/** All others. */
export const AT_THE_TAILGATE = { target: 48, text: 15 };

/** Complaints about an open screen, upright and lying. Sizes are the least ones, in CSS pixels, inside `main`; 48 and 15 hold everywhere. */
export async function complaints(page, sizes = AT_THE_TAILGATE) {
  await pinBottom(page, false);
  const seen = await checks.accessibility(page);
  await pinBottom(page, true);
  const found = [
    ...seen,
    ...(await checks.targets(page)),
    ...(await checks.targets(page, { least: sizes.target, within: 'main' })),
    ...(await checks.text(page)),
    ...(await checks.text(page, { least: sizes.text, within: 'main' })),
    ...(await checks.width(page)),
    ...(await checks.keyboard(page)),
    ...page.trouble,
  ];
  const upright = page.viewportSize();
  await page.setViewportSize(LYING);
  found.push(...(await checks.width(page)));
  await page.setViewportSize(upright);
  return [...new Set(found)];
}

// What the bottom bar covers is scrolled clear by a thumb; axe-core takes it for hidden. So the bar stands at the page's end while axe looks.
function pinBottom(page, pinned) {
  return page.evaluate((pin) => {
    for (const bar of document.querySelectorAll('.hand')) bar.style.position = pin ? '' : 'static';
  }, pinned);
}

/** Takes a picture of an open screen and fails on the first complaint about it. */
export async function lookOver(page, name, sizes = AT_THE_TAILGATE) {
  const taken = await picture(page, name);
  const found = await complaints(page, sizes);
  assert.deepEqual(found, [], `${name} (${taken})`);
}
