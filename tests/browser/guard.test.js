// Who is answered, and that the page needs no script: what the policy forbids must not be what the work stands on.

import assert from 'node:assert/strict';
import { mkdtemp, rm } from 'node:fs/promises';
import { request as ask } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { start } from './harness/ladderbook.js';
import { openBrowser, openPhone } from './harness/phone.js';
import { wordsOf } from './harness/words.js';

const say = wordsOf('en');

let browser, folder, ladderbook, address;
before(async () => {
  folder = await mkdtemp(join(tmpdir(), 'ladderbook-'));
  browser = await openBrowser();
  ladderbook = await start('demo', '--at-call', '--port', '0', '--out', folder);
  address = new URL(ladderbook.url);
});
after(async () => {
  await browser?.close();
  await ladderbook?.stop();
  await rm(folder, { recursive: true, force: true });
});

/** Asks as no browser would let itself be made to: any host, any origin, any cookie. */
function answerTo({ path = '/', method = 'GET', headers = {}, body } = {}) {
  return new Promise((resolve, reject) => {
    const asked = ask({ host: '127.0.0.1', port: address.port, path, method, headers }, (answer) => {
      answer.resume();
      answer.once('end', () => resolve({ status: answer.statusCode, headers: answer.headers }));
    });
    asked.once('error', reject);
    asked.end(body);
  });
}

const cookie = () => `ladderbook=${address.searchParams.get('token')}`;

test('without the token, or with another one, nobody is answered', async () => {
  assert.equal((await answerTo()).status, 403);
  assert.equal((await answerTo({ path: '/settings' })).status, 403);
  assert.equal((await answerTo({ path: `/?token=${'0'.repeat(48)}` })).status, 403);
  assert.equal((await answerTo({ headers: { cookie: `ladderbook=${'0'.repeat(48)}` } })).status, 403);
  assert.equal((await answerTo({ headers: { cookie: cookie() } })).status, 200, 'the right one is answered');
});

test('a foreign name that leads to this computer is refused', async () => {
  for (const host of ['roof.example', `roof.example:${address.port}`, '127.0.0.1', `127.0.0.1:${Number(address.port) + 1}`]) {
    assert.equal((await answerTo({ headers: { host, cookie: cookie() } })).status, 421, host);
  }
});

test('a tap that comes from another page changes nothing', async () => {
  const page = await openPhone(browser);
  await page.goto(ladderbook.url);
  await page.goto(new URL('/settings', address.origin).href);
  const name = page.getByLabel(say('settings-name'));
  const before = await name.inputValue();
  const action = JSON.stringify({ do: 'submit', form: { form: 'firm' }, values: [] });
  const body = new URLSearchParams({ at: '/settings', action, name: 'Somebody Else' }).toString();
  const post = (headers) =>
    answerTo({ path: '/act', method: 'POST', body, headers: { 'content-type': 'application/x-www-form-urlencoded', cookie: cookie(), ...headers } });
  for (const foreign of [
    { origin: 'http://roof.example' },
    { origin: `http://127.0.0.1:${Number(address.port) + 1}` },
    { origin: 'null' },
    { 'sec-fetch-site': 'cross-site' },
    { 'sec-fetch-site': 'same-site' },
  ]) {
    assert.equal((await post(foreign)).status, 403, JSON.stringify(foreign));
  }
  await page.reload();
  assert.equal(await name.inputValue(), before);
  assert.equal((await post({ origin: address.origin })).status, 303, 'the same tap from the page itself is carried out');
  await page.reload();
  assert.equal(await name.inputValue(), 'Somebody Else');
});

test('the token leaves the address, and the policy lets in nothing from elsewhere', async () => {
  const page = await openPhone(browser);
  const answer = await page.goto(ladderbook.url);
  assert.equal(page.url(), `${address.origin}/`);
  const policy = answer.headers()['content-security-policy'];
  for (const rule of ["default-src 'none'", "script-src 'self'", "form-action 'self'", "frame-ancestors 'none'"]) {
    assert.ok(policy.includes(rule), rule);
  }
  assert.ok(!policy.includes('unsafe'), policy);
  const [kept] = (await page.context().cookies()).filter((one) => one.name === 'ladderbook');
  assert.ok(kept.httpOnly);
  assert.equal(kept.sameSite, 'Strict');
  assert.deepEqual(page.trouble, []);
});

test('without a script he finds, starts, marks and takes a picture', async () => {
  const page = await openPhone(browser, { javaScriptEnabled: false });
  const tap = (role, name) => page.getByRole(role, { name, exact: true }).first().tap();
  await page.goto(ladderbook.url);
  await page.getByLabel(say('arrive-find')).fill('318 lamplighter');
  await tap('button', say('arrive-find-button'));
  await page.getByRole('link', { name: /^318 Lamplighter Ln/ }).tap();
  await page.getByLabel(say('request-words')).fill('One more bead along the dormer.');
  await page.getByLabel(say('request-scope')).selectOption({ label: say('scope-whole-roof') });
  await tap('button', say('doorstep-open-button'));
  await page.getByRole('heading', { name: say('safety-title'), exact: true }).waitFor();
  await tap('link', say('safety-up'));
  const spot = page.getByRole('group').first();
  const name = await spot.getAttribute('aria-label');
  await spot.getByRole('button', { name: say('rung-sound'), exact: true }).tap();
  await page.getByRole('status').getByText(say('saved-sound')).waitFor();
  await page.getByRole('group', { name, exact: true }).getByRole('link', { name: say('walk-mark'), exact: true }).tap();
  await tap('button', say('rung-ageing'));
  await page.getByRole('status').getByText(say('saved'), { exact: true }).waitFor();
  assert.equal(await page.getByRole('button', { name: say('rung-ageing'), exact: true }).getAttribute('aria-pressed'), 'true');
  const picture = { name: 'roof.png', mimeType: 'image/png', buffer: await page.screenshot() };
  await page.getByLabel(say('shutter'), { exact: true }).setInputFiles(picture);
  await tap('button', say('shutter-keep'));
  await page.getByRole('status').getByText(say('saved-picture')).waitFor();
  assert.equal(await page.locator('.pictures img').count(), 1);
});
