// The words that a person reads, from the message files themselves.

import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const WORDS = fileURLToPath(new URL('../../../core/trade/words/', import.meta.url));

/** Answers with a function from a key and its arguments to what a screen says, for messages of one line without choices. */
export function wordsOf(language) {
  const messages = new Map();
  for (const file of readdirSync(`${WORDS}${language}`, { recursive: true })) {
    if (!file.endsWith('.ftl')) continue;
    for (const [, key, text] of readFileSync(`${WORDS}${language}/${file}`, 'utf8').matchAll(/^([a-z][\w-]*) = (.+)$/gm)) {
      messages.set(key, text);
    }
  }
  return (key, given = {}) => {
    const text = messages.get(key);
    if (text === undefined) throw new Error(`no message ${key}`);
    return text.replaceAll(/\{ \$([\w-]+) \}/g, (_, name) => {
      if (given[name] === undefined) throw new Error(`${key} asks for ${name}`);
      return given[name];
    });
  };
}
