// What stands at an address: found by where the phone is, written anew, joined with its twin and parted again, and its finished work pictured.

import assert from 'node:assert/strict';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { start } from './harness/ladderbook.js';
import { AT_THE_TAILGATE, lookOver } from './harness/look_over.js';
import { openBrowser, openPhone } from './harness/phone.js';
import { Hand } from './harness/visit.js';
import { wordsOf } from './harness/words.js';

const say = wordsOf('en');
const STORY = new URL('../../fixtures/demo/01-lamplighter-lane/01-2022-04-26.json', import.meta.url);

let browser, folder, ladderbook, page, hand, position;
before(async () => {
  position = JSON.parse(await readFile(STORY, 'utf8')).property.position;
  folder = await mkdtemp(join(tmpdir(), 'ladderbook-'));
  browser = await openBrowser();
  ladderbook = await start('demo', '--port', '0', '--out', join(folder, 'told'));
  page = await openPhone(browser, { permissions: ['geolocation'], geolocation: position });
  page.setDefaultTimeout(10_000);
  hand = new Hand(page, say);
  await page.goto(ladderbook.url);
});
after(async () => {
  await browser?.close();
  await ladderbook?.stop();
  await rm(folder, { recursive: true, force: true });
});

test('the phone knows where it stands', async () => {
  await hand.go(hand.button(say('position-here')));
  await hand.go(page.getByRole('link', { name: /^318 Lamplighter Ln/ }));
});

test('another address, a danger, a tenant', async () => {
  await hand.go(hand.link(say('property-title')));
  await lookOver(page, 'property', AT_THE_TAILGATE);
  const also = await hand.unfold(say('property-also-add'));
  await also.getByLabel(say('address-line')).fill('2 Wickmaker Passage');
  await hand.keep(hand.button(say('settings-keep'), also), 'saved');
  const about = await hand.unfold(say('property-about'));
  await about.getByLabel(say('property-dangers')).fill('A ram in the back yard');
  await hand.keep(hand.button(say('settings-keep'), about), 'saved');
  const person = await hand.unfold(say('property-person-add'));
  await person.getByLabel(say('person-name')).fill('Cordelia Vane');
  await person.getByLabel(say('person-role')).selectOption({ label: say('role-tenant') });
  await hand.keep(hand.button(say('settings-keep'), person), 'saved');
  await page.getByText('2 Wickmaker Passage').waitFor();
  await hand.go(hand.link(say('back-doorstep')));
  await page.getByText('A ram in the back yard').first().waitFor();
});

test('a twin is joined, and parted again', async () => {
  await hand.go(hand.link(say('property-title')));
  const search = page.locator('form.search');
  await search.getByLabel(say('arrive-find')).fill('saltworks road');
  await hand.go(hand.button(say('arrive-find-button'), search));
  await lookOver(page, 'property-twins', AT_THE_TAILGATE);
  await hand.keep(hand.button(say('property-join-button')).first(), 'saved-joined');
  await hand.keep(hand.button(say('property-part-button')), 'saved-parted');
  assert.equal(await hand.button(say('property-part-button')).count(), 0);
});

test('erasing asks for the address, and the wrong one erases nothing', async () => {
  const erase = await hand.unfold(say('property-erase'));
  await erase.getByLabel(say('property-erase-confirm')).fill('1 Elsewhere St');
  await hand.go(hand.button(say('property-erase-button'), erase));
  assert.match(await page.locator('body').innerText(), new RegExp(say('wrong-confirm')));
  page.trouble.length = 0; // the browser names the refusal's status
  await hand.go(hand.link(say('back-doorstep')));
});

test('finished work is pictured', async () => {
  const seen = await (await page.request.get(await aPicture())).body();
  await hand.go(hand.link(say('outcome-title')));
  await page.getByLabel(say('outcome-came')).selectOption({ label: say('came-done-by-us') });
  await hand.keep(hand.button(say('outcome-keep')), 'saved');
  const shutter = page.locator('.told .shutter input[type=file]').first();
  await shutter.setInputFiles({ name: 'done.jpg', mimeType: 'image/jpeg', buffer: seen });
  await page.locator('.notice').waitFor();
  await page.locator('.told img').first().evaluate((picture) => picture.decode());
  await lookOver(page, 'outcome-pictured', AT_THE_TAILGATE);
});

/** The address of some picture of the house. */
async function aPicture() {
  const letter = await hand.link(say('doorstep-past')).evaluate((link) => link.href);
  await page.goto(letter.replace('/letter/', '/then-and-now/'));
  const picture = await page.locator('.picture').first().evaluate((link) => link.href);
  await page.goBack();
  return picture;
}
