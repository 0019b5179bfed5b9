// The roof measured, its leak traced, its courses priced: on the demo's main story, in English and in Spanish.

import assert from 'node:assert/strict';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { start } from './harness/ladderbook.js';
import { AT_THE_TAILGATE, lookOver, ON_THE_LADDER } from './harness/look_over.js';
import { openBrowser, openPhone } from './harness/phone.js';
import { Hand } from './harness/visit.js';
import { wordsOf } from './harness/words.js';

let say = wordsOf('en');
let browser, folder, ladderbook, page, hand, doorstep;
before(async () => {
  folder = await mkdtemp(join(tmpdir(), 'ladderbook-'));
  browser = await openBrowser();
  ladderbook = await start('demo', '--port', '0', '--out', join(folder, 'told'));
  page = await openPhone(browser);
  page.setDefaultTimeout(10_000);
  hand = new Hand(page, say);
  await page.goto(ladderbook.url);
  await page.getByLabel(say('arrive-find')).fill('318 lamplighter');
  await hand.go(hand.button(say('arrive-find-button')));
  await hand.go(page.getByRole('link', { name: /^318 Lamplighter Ln/ }));
  doorstep = page.url();
});
after(async () => {
  await browser?.close();
  await ladderbook?.stop();
  await rm(folder, { recursive: true, force: true });
});

test('the plan, its numbers, and its files', async () => {
  await hand.go(hand.link(say('roof-title')));
  const plan = page.locator('.plan svg').first();
  assert.equal(await plan.getAttribute('role'), 'img');
  assert.match(await plan.locator('desc').textContent(), /8:12/);
  await lookOver(page, 'roof', AT_THE_TAILGATE);
  for (const name of ['plan.svg', 'plan.dxf', 'plan.geojson', 'slopes.csv', 'lines.csv']) {
    const link = page.locator(`a[href$="/${name}"]`);
    const file = await page.request.get(await link.evaluate((one) => one.href));
    assert.equal(file.status(), 200, name);
    assert.ok((await file.text()).length > 100, name);
  }
});

test('a gable becomes a hip, and a gable again', async () => {
  const slopes = () => page.locator('.plan desc').first().textContent();
  const before = await slopes();
  // The second edge of the outline, to the right: it is named with its length and with what stands there.
  const [second] = say('roof-edge', { number: 2, length: '|', is: '' }).split('|');
  const edge = page.locator('details').filter({ hasText: second }).first();
  const turn = async (what) => {
    await edge.locator('summary').tap();
    await hand.go(hand.button(say(what), edge));
    assert.ok((await edge.locator('summary').innerText()).includes(say(what)));
  };
  await turn('edge-hip');
  assert.notEqual(await slopes(), before);
  await turn('edge-gable');
  assert.equal(await slopes(), before);
});

test('a pitch from rise and run, and from a rafter', async () => {
  const rise = await hand.unfold(say('roof-slope-rise'));
  await rise.getByLabel(say('roof-rise')).fill('8 in');
  await rise.getByLabel(say('roof-run')).fill('12 in');
  await hand.keep(hand.button(say('measure-keep'), rise), 'saved-roof');
  const rafter = await hand.unfold(say('roof-slope-rafter'));
  await rafter.getByLabel(say('roof-rafter'), { exact: true }).fill("16' 10\"");
  await rafter.getByLabel(say('roof-rafter-run')).fill('14 ft');
  await hand.keep(hand.button(say('measure-keep'), rafter), 'saved-roof');
  await page.locator('.row', { hasText: say('got-tape') }).first().waitFor();
});

test('a second dormer is put on the roof and taken off, and the shingles are looked at', async () => {
  const slopes = () => page.locator('.plan desc').first().textContent();
  const before = await slopes();
  const dormer = await hand.unfold(say('roof-dormer'));
  await dormer.getByLabel(say('dormer-x')).fill('33 ft');
  await dormer.getByLabel(say('dormer-y')).fill('5 ft');
  await dormer.getByLabel(say('dormer-wide')).fill('6 ft');
  await dormer.getByLabel(say('dormer-above')).fill('2 ft');
  await dormer.getByLabel(say('roof-pitch')).fill('8/12');
  await lookOver(page, 'roof-forms', AT_THE_TAILGATE);
  await hand.keep(hand.button(say('measure-keep'), dormer), 'saved-roof');
  assert.notEqual(await slopes(), before);
  await lookOver(page, 'roof-dormers', AT_THE_TAILGATE);
  await hand.unfold(say('roof-laid'));
  const rims = await page.locator('details .plan svg path').evaluateAll((all) => all.map((one) => one.getAttribute('d')));
  const shingles = rims.join('').split('M').length - 1;
  assert.ok(shingles > 500, `${shingles} shingles are drawn`);
  await lookOver(page, 'roof-laid', AT_THE_TAILGATE);
  await hand.keep(page.getByRole('button', { name: new RegExp(say('roof-dormer-off', { number: '2' })) }), 'saved-dormer-off');
  assert.equal(await slopes(), before);
});

test('what gives no roof is refused, and stays typed', async () => {
  const sides = await hand.unfold(say('roof-sides'));
  await sides.locator('textarea').fill('40 ft L\n12 ft');
  await sides.getByLabel(say('roof-pitch')).fill('6/12');
  await hand.go(hand.button(say('measure-keep'), sides));
  assert.ok((await page.locator('.trouble').innerText()).includes(say('wrong-side')));
  assert.equal(await page.locator('textarea[name=sides]').inputValue(), '40 ft L\n12 ft');
  page.trouble.length = 0; // the browser names the refusal's status
});

test('a stain is traced to the cheek that failed', async () => {
  await hand.go(hand.link(say('leak-title')));
  await page.getByLabel(say('roof-x')).fill('16 ft');
  await page.getByLabel(say('roof-y')).fill('5 ft');
  await page.getByLabel(say('request-wet-when')).selectOption({ label: say('wet-when-driven-rain') });
  await page.getByLabel(say('leak-wind')).selectOption({ label: say('wind-street') });
  await hand.go(hand.button(say('leak-trace')));
  assert.match(await page.locator('.suspect').first().innerText(), /left cheek/);
  await lookOver(page, 'leak', AT_THE_TAILGATE);
});

test('the offer, put in the letter', async () => {
  await page.goto(doorstep);
  const letter = await hand.link(say('doorstep-past')).evaluate((link) => link.href);
  await page.goto(letter.replace('/letter/', '/then-and-now/'));
  await hand.go(hand.link(say('verdict-title')));
  await hand.go(hand.link(say('offer-title')));
  await page.locator('.price').first().waitFor();
  await lookOver(page, 'offer', AT_THE_TAILGATE);
  await hand.keep(hand.button(say('offer-put')).last(), 'saved-offer');
});

test('the worksheet: what is counted there is priced, what cannot be stays typed', async () => {
  const course = page.locator('section.when').filter({ hasText: say('remedy-new-drip-edge') });
  assert.equal(await course.locator('.price').count(), 0);
  const sheet = await hand.unfold(say('worksheet-title'));
  const count = sheet.locator('input[name$="-new-drip-edge"]');
  const years = sheet.getByLabel(say('worksheet-repair-lasts'));
  assert.equal(await count.inputValue(), '');
  await count.fill('40-43');
  await years.fill('for ever');
  await hand.go(hand.button(say('worksheet-keep'), sheet));
  const trouble = await page.locator('.trouble').innerText();
  assert.ok(trouble.includes(say('worksheet-repair-lasts')) && trouble.includes(say('wrong-years')), trouble);
  assert.equal(await years.inputValue(), 'for ever');
  assert.equal(await count.inputValue(), '40-43');
  page.trouble.length = 0; // the browser names the refusal's status
  await years.fill('5-8');
  await lookOver(page, 'offer-worksheet', AT_THE_TAILGATE);
  await hand.keep(hand.button(say('worksheet-keep'), sheet), 'saved-worksheet');
  const price = await course.locator('.price').innerText();
  assert.match(await course.innerText(), /5 to 8 years/);
  await hand.unfold(say('worksheet-title'));
  await count.fill('80-86');
  await hand.keep(hand.button(say('worksheet-keep'), sheet), 'saved-worksheet');
  assert.notEqual(await course.locator('.price').innerText(), price);
  await lookOver(page, 'offer-priced-again', AT_THE_TAILGATE);
});

test('a ladder is told by the rule, the caution first', async () => {
  const offer = page.url();
  await page.goto(doorstep);
  await page.getByLabel(say('request-words')).fill('Look at the dormer again.');
  await hand.keep(hand.button(say('doorstep-open-button')), 'saved-visit');
  const check = await hand.unfold(say('ladder-check'));
  await check.getByLabel(say('ladder-working')).fill('20 ft');
  await check.getByLabel(say('ladder-base')).fill('8 ft');
  await check.getByLabel(say('ladder-landing')).fill('18 ft');
  await hand.keep(hand.button(say('ladder-tell'), check), 'saved');
  const told = await page.locator('main').innerText();
  assert.ok(told.indexOf(say('ladder-caution')) < told.indexOf('66.4°') && told.includes('66.4°'), told);
  await hand.unfold(say('ladder-check'));
  await lookOver(page, 'safety-ladder', ON_THE_LADDER);
  await page.goto(offer);
});

test('the same in Spanish', async () => {
  const offer = page.url();
  await page.goto(new URL('/settings', offer).href);
  await page.getByLabel(say('settings-language')).selectOption({ label: say('language-spanish') });
  await hand.go(hand.button(say('settings-keep')).first());
  say = wordsOf('es');
  await page.goto(offer);
  await lookOver(page, 'es-offer', AT_THE_TAILGATE);
  await page.locator('a[href^="/roof/"]').first().tap();
  await page.waitForURL('**/roof/**');
  await lookOver(page, 'es-roof', AT_THE_TAILGATE);
  await page.goto(page.url().replace('/roof/', '/leak/'));
  await lookOver(page, 'es-leak', AT_THE_TAILGATE);
  assert.deepEqual(page.trouble, []);
});
