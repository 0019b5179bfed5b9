// Whether the checks themselves see what they should, on a page that is good and on one that is bad in every way.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname } from 'node:path';
import { after, before, test } from 'node:test';
import { complaints, lookOver, ON_THE_LADDER } from './harness/look_over.js';
import { openBrowser, openPhone } from './harness/phone.js';

const KINDS = { '.html': 'text/html', '.css': 'text/css' };
const POLICY = "default-src 'none'; style-src 'self'";

let browser, server, address;

before(async () => {
  browser = await openBrowser();
  server = createServer(async (request, response) => {
    try {
      const page = await readFile(new URL(`selfcheck${request.url}`, import.meta.url));
      response.setHeader('Content-Type', KINDS[extname(request.url)]);
      response.setHeader('Content-Security-Policy', POLICY);
      response.end(page);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((listening) => server.listen(0, '127.0.0.1', listening));
  address = `http://127.0.0.1:${server.address().port}`;
});

after(async () => {
  await browser.close();
  server.close();
});

test('a good page passes every check', async () => {
  const page = await openPhone(browser);
  await page.goto(`${address}/good.html`);
  await lookOver(page, 'selfcheck-good', ON_THE_LADDER);
});

test('a bad page is found bad in each way', async () => {
  const page = await openPhone(browser);
  await page.goto(`${address}/bad.html`);
  const found = await complaints(page, ON_THE_LADDER);
  const ways = {
    'no language': /^html-has-lang/,
    'a box without a name': /^label/,
    'contrast under 7:1': /^color-contrast-enhanced/,
    'a target too small': /“Small” is 160 × 30, not 72/,
    'a target covered': /“Covered” lies under a div/,
    'text too small': /“Nobody reads this in the sun” is 12 px, not 15/,
    'letters too small in a drawing': /“Eave” is 13 px, not 15/,
    'too wide': /^the page is \d+ wide on a screen of \d+/,
    'out of the keyboard’s reach': /“Left out” is not reached with the Tab key/,
    'focus not shown': /“Unmarked” does not show that it has the focus/,
    'a script that the policy forbids': /^the browser complains: .*Content Security Policy/,
  };
  for (const [way, words] of Object.entries(ways)) {
    assert.ok(found.some((complaint) => words.test(complaint)), `${way} was not seen in:\n${found.join('\n')}`);
  }
});

test('a question to another computer is seen', async () => {
  const page = await openPhone(browser);
  await page.route('http://example.invalid/**', (route) => route.abort());
  await page.setContent('<img alt="" src="http://example.invalid/roof.jpg">');
  assert.match(page.trouble.join('\n'), /it asks another computer: http:\/\/example\.invalid\/roof\.jpg/);
});
