// The main story's second visit made by taps alone, from the call to the calendar. What the book then advises must be what the same visit,
// taken in from its file, advises.

import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { promisify } from 'node:util';
import { PROGRAM, start } from './harness/ladderbook.js';
import { AT_THE_TAILGATE, lookOver, ON_THE_LADDER } from './harness/look_over.js';
import { openBrowser, openPhone } from './harness/phone.js';
import { Hand } from './harness/visit.js';
import { wordsOf } from './harness/words.js';

const run = promisify(execFile);
const TODAY = '2026-09-14';
const MAIN = '318 lamplighter';
const FILE = new URL('../../fixtures/demo/01-lamplighter-lane/02-2026-09-14.json', import.meta.url);

let say = wordsOf('en');
let browser, folder, ladderbook, page, hand, told, file;
before(async () => {
  file = JSON.parse(await readFile(FILE, 'utf8'));
  folder = await mkdtemp(join(tmpdir(), 'ladderbook-'));
  browser = await openBrowser();
  told = run(PROGRAM, ['demo', '--no-serve', '--out', join(folder, 'told')]);
  ladderbook = await start('demo', '--at-call', '--port', '0', '--out', join(folder, 'tapped'));
  page = await openPhone(browser);
  page.setDefaultTimeout(10_000);
  hand = new Hand(page, say);
  await page.goto(ladderbook.url);
});
after(async () => {
  await browser?.close();
  await ladderbook?.stop();
  await rm(folder, { recursive: true, force: true });
});

const title = (key) => page.getByRole('heading', { level: 1, name: say(key), exact: true }).waitFor();

/** Fills the request as the file has it. */
async function ask({ request, scope }) {
  await page.getByLabel(say('request-words')).fill(request.words);
  const [{ kind, remedy }] = request.asks;
  await page.getByLabel(say('request-kind')).selectOption({ label: say(`kind-${kind}`) });
  await page.getByLabel(say('request-remedy')).selectOption({ label: say(`remedy-${remedy}`) });
  await page.getByLabel(say('request-leaking')).selectOption({ label: say(`answer-${request.leaking}`) });
  await page.getByLabel(say('request-room')).fill(request.room);
  await page.getByLabel(say('request-scope')).selectOption({ label: say(`scope-${scope}`) });
}

test('the call: found, and asked', async () => {
  await lookOver(page, 'arrive', AT_THE_TAILGATE);
  await page.getByLabel(say('arrive-find')).fill(MAIN);
  await hand.go(hand.button(say('arrive-find-button')));
  await hand.go(page.getByRole('link', { name: /^318 Lamplighter Ln/ }));
  await lookOver(page, 'doorstep-at-call', AT_THE_TAILGATE);
  await ask(file.visit);
  await hand.keep(hand.button(say('doorstep-open-button')), 'saved-visit');
  await title('safety-title');
});

test('the door: what they ask goes against what was said', async () => {
  await hand.go(hand.link(say('back-doorstep')));
  const door = await page.locator('main').innerText();
  assert.ok(door.includes(file.visit.request.words));
  assert.ok(door.includes(say('doorstep-contradicts')));
  await lookOver(page, 'doorstep', AT_THE_TAILGATE);
  await hand.go(hand.link(say('doorstep-safety')));
});

test('safety and the way up', async () => {
  for (const { check, holds } of file.visit.safety) {
    await hand.choose(hand.button(say(`answer-${holds}`), hand.group(say(`safety-${check}`))));
  }
  for (const [at, { reached }] of file.structures.entries()) await hand.choose(hand.button(say(`reach-${reached}`)).nth(at));
  await lookOver(page, 'safety', ON_THE_LADDER);
  await hand.go(hand.link(say('safety-up')));
  await lookOver(page, 'walk', ON_THE_LADDER);
});

test('a tap taken back leaves nothing', async () => {
  const name = await page.locator('.spot').first().getAttribute('aria-label');
  const says = () => hand.group(name).innerText();
  const before = await says();
  await hand.keep(hand.button(say('rung-sound'), hand.group(name)), 'saved-sound');
  assert.notEqual(await says(), before);
  await hand.keep(hand.button(say('undo')), 'saved-undone');
  assert.equal(await says(), before);
});

test('every part of the file by taps', { timeout: 300_000 }, async () => {
  await hand.walk(file.structures);
  await lookOver(page, 'walk-done', ON_THE_LADDER);
});

test('a picture from the walk, through the tray, to its part', async () => {
  const cheek = say('part-which', { kind: say('kind-sidewall-flashing'), which: 'dormer, left cheek' });
  const picture = { name: 'cheek.png', mimeType: 'image/png', buffer: await page.screenshot() };
  await Promise.all([page.waitForNavigation(), page.getByLabel(say('shutter'), { exact: true }).setInputFiles(picture)]);
  await page.getByRole('status').getByText(say('saved-picture')).waitFor();
  await hand.unfold(say('walk-more'));
  await hand.go(hand.link(say('tray-title')));
  await lookOver(page, 'tray', AT_THE_TAILGATE);
  await page.getByLabel(say('caption-words')).fill('A second bead over the first');
  await hand.keep(hand.button(say('say-keep')), 'saved-words');
  const parts = await hand.unfold(say('tray-tie'));
  await hand.keep(parts.getByRole('button', { name: new RegExp(`^${cheek}`) }), 'saved-tied');
  assert.ok(await page.getByText(say('tray-empty')).isVisible());
  await hand.go(hand.link(say('back-walk')));
});

test('what was typed wrong is refused, and stays', async () => {
  await hand.climb(say('stop-walls'));
  await hand.go(hand.link(say('walk-mark'), page.locator('.spot').first()));
  await lookOver(page, 'mark', ON_THE_LADDER);
  const fold = await hand.unfold(say('measure-title'));
  await fold.getByLabel(say('measure-length')).fill('twelve or so');
  await hand.go(hand.button(say('measure-keep')));
  await page.getByRole('alert').waitFor();
  assert.equal(await page.getByLabel(say('measure-length')).inputValue(), 'twelve or so');
  assert.ok(await page.getByLabel(say('measure-length')).isVisible(), 'the form stays open');
  // The refusal has a status of its own (422), which the browser notes.
  page.trouble.splice(0);
  await hand.go(hand.link(say('back-walk')));
});

test('closed, judged, written, answered, and in the calendar', { timeout: 120_000 }, async () => {
  const fold = await hand.unfold(say('walk-close'));
  await hand.go(hand.button(say('close-not-reached'), fold));
  await title('then-and-now-title');
  await lookOver(page, 'then-and-now', AT_THE_TAILGATE);
  await hand.go(hand.link(say('verdict-title')));
  await lookOver(page, 'verdict', AT_THE_TAILGATE);
  await hand.go(hand.link(say('verdict-letter')));
  await hand.keep(hand.button(say('letter-write-english')), 'saved-letter');
  const paper = await page.request.get(await hand.link(say('letter-open')).evaluate((link) => link.href));
  assert.equal(paper.headers()['content-type'], 'application/pdf');
  assert.equal((await paper.body()).subarray(0, 5).toString(), '%PDF-');
  await lookOver(page, 'letter', AT_THE_TAILGATE);
  await hand.go(hand.link(say('outcome-title')));
  await lookOver(page, 'outcome', AT_THE_TAILGATE);
  await page.getByLabel(say('outcome-came')).selectOption({ label: say('came-accepted') });
  await page.getByLabel(say('outcome-paid')).fill('4,120.00');
  await hand.keep(hand.button(say('outcome-keep')), 'saved');
  const remind = await hand.unfold(say('remind-title'));
  await remind.getByLabel(say('remind-on')).fill('2026-11-03');
  await remind.getByLabel(say('remind-because')).selectOption({ label: say('because-look-promised') });
  await remind.getByLabel(say('say-words')).fill('The attic, once the wardrobe is away.');
  await hand.keep(hand.button(say('remind-keep')), 'saved');
  const calendar = await (await page.request.get(new URL('/calendar.ics', page.url()).href)).text();
  assert.match(calendar, /DTSTART;VALUE=DATE:20261103/);
  assert.match(calendar.replaceAll('\r\n ', ''), /once the wardrobe is away/);
  assert.deepEqual(page.trouble, []);
});

test('every screen says the same in Spanish, and is looked over', { timeout: 300_000 }, async () => {
  await page.goto(new URL('/reminders', page.url()).href);
  await lookOver(page, 'reminders', AT_THE_TAILGATE);
  await page.goto(new URL('/settings', page.url()).href);
  await lookOver(page, 'settings', AT_THE_TAILGATE);
  await page.getByLabel(say('settings-language')).selectOption({ label: say('language-spanish') });
  await hand.go(hand.button(say('settings-keep')).first());
  say = wordsOf('es');
  hand = new Hand(page, say);
  await title('settings-title');
  await lookOver(page, 'es-settings', AT_THE_TAILGATE);
  await hand.go(hand.link(say('arrive-title')));
  await lookOver(page, 'es-arrive', AT_THE_TAILGATE);
  await hand.go(hand.link(say('reminders-title')));
  await lookOver(page, 'es-reminders', AT_THE_TAILGATE);
  await hand.go(hand.link(say('arrive-title')));
  await page.getByLabel(say('arrive-find')).fill(MAIN);
  await hand.go(hand.button(say('arrive-find-button')));
  await hand.go(page.getByRole('link', { name: /^318 Lamplighter Ln/ }));
  await lookOver(page, 'es-doorstep', AT_THE_TAILGATE);
  await hand.go(hand.link(say('outcome-title')));
  await lookOver(page, 'es-outcome', AT_THE_TAILGATE);
  await hand.go(hand.link(say('back-doorstep')));
  await hand.go(hand.link(say('doorstep-past')));
  await lookOver(page, 'es-letter', AT_THE_TAILGATE);
  await page.goto(page.url().replace('/letter/', '/then-and-now/'));
  await lookOver(page, 'es-then-and-now', AT_THE_TAILGATE);
  await hand.go(hand.link(say('verdict-title')));
  await lookOver(page, 'es-verdict', AT_THE_TAILGATE);
  await onAnotherRoof();
});

/** What is seen only while a visit is open. */
async function onAnotherRoof() {
  await page.goto(new URL('/', page.url()).href);
  await hand.go(page.locator('.rows a').first());
  await page.getByLabel(say('request-words')).fill('Gotea.');
  await hand.keep(hand.button(say('doorstep-open-button')), 'saved-visit');
  await lookOver(page, 'es-safety', ON_THE_LADDER);
  await hand.go(hand.link(say('safety-up')));
  await lookOver(page, 'es-walk', ON_THE_LADDER);
  await hand.go(hand.link(say('walk-mark'), page.locator('.spot').first()));
  await hand.choose(hand.button(say('rung-failing')));
  await hand.go(page.locator('.likely button').first());
  await lookOver(page, 'es-mark', ON_THE_LADDER);
  await hand.go(hand.link(say('back-walk')));
  await hand.unfold(say('walk-more'));
  await hand.go(hand.link(say('tray-title')));
  await lookOver(page, 'es-tray', AT_THE_TAILGATE);
}

test('the book advises what it advises of the same visit taken from its file', { timeout: 120_000 }, async () => {
  await ladderbook.stop();
  await told;
  await speakSpanish('told');
  const tapped = await asked('tapped', 'verdict', MAIN);
  assert.ok(tapped.includes(say('verdict-title')), 'the language that was set stays set');
  assert.equal(tapped, await asked('told', 'verdict', MAIN));
  await asked('tapped', 'check');
  assert.equal(JSON.parse(await asked('tapped', '--json', 'rebuild')).same, true);
});

function at(name) {
  return ['--book', join(folder, name, 'book'), '--key-file', join(folder, name, 'demo.key'), '--today', TODAY];
}

/** What a command says of one of the two books; one that finds something wrong ends with an error. */
async function asked(name, ...words) {
  return (await run(PROGRAM, [...at(name), ...words])).stdout;
}

async function speakSpanish(name) {
  const english = wordsOf('en');
  const served = await start(...at(name), 'serve', '--port', '0');
  try {
    const page = await openPhone(browser);
    await page.goto(served.url);
    await page.goto(new URL('/settings', page.url()).href);
    await page.getByLabel(english('settings-language')).selectOption({ label: english('language-spanish') });
    await new Hand(page, english).go(page.getByRole('button', { name: english('settings-keep'), exact: true }).first());
  } finally {
    await served.stop();
  }
}
