// A visit made by taps, from a visit file of the demo: what a person reads, taps and types, and nothing else.

import assert from 'node:assert/strict';

/** A hand on the page of a visit whose walk is open. `say` gives the words of a key. */
export class Hand {
  constructor(page, say) {
    this.page = page;
    this.say = say;
  }

  /** Taps something that leads to another page, and waits for it. */
  async go(tapped) {
    await Promise.all([this.page.waitForNavigation(), tapped.tap()]);
  }

  /** Taps a button and waits for the word that it was kept. */
  async keep(button, key) {
    await this.go(button);
    await this.page.getByRole('status').getByText(this.say(key)).waitFor();
  }

  button(name, within = this.page) {
    return within.getByRole('button', { name, exact: true });
  }

  link(name, within = this.page) {
    return within.getByRole('link', { name, exact: true });
  }

  /** What is folded behind a title, opened. */
  async unfold(title) {
    const fold = this.page.locator('main details').filter({ has: this.page.locator('summary', { hasText: new RegExp(`^\\s*${escaped(title)}`) }) });
    if ((await fold.getAttribute('open')) === null) await fold.locator('summary').tap();
    return fold;
  }

  group(name) {
    return this.page.getByRole('group', { name, exact: true });
  }

  /** Goes over every structure of a visit file, stop by stop from the ground up, then adds by the form what no stop expects. */
  async walk(structures) {
    for (const structure of structures) {
      await this.go(this.link(structure.name ?? this.say(`structure-${structure.kind}`)));
      const left = new Map(structure.parts.map((part) => [this.nameOf(part, structure), part]));
      for (const stop of await this.stops()) await this.stop(stop, left, structure);
      for (const [name, part] of left) await this.add(name, part, structure);
    }
  }

  /** The names of the stops, from the ground up. */
  async stops() {
    return (await this.page.locator('.stop .rung b').allInnerTexts()).reverse();
  }

  async stop(stop, left, structure) {
    await this.climb(stop);
    const names = await this.page.locator('.spot').evaluateAll((spots) => spots.map((spot) => spot.getAttribute('aria-label')));
    for (const name of names.filter((name) => left.has(name))) {
      await this.part(name, left.get(name), structure);
      left.delete(name);
    }
  }

  climb(stop) {
    return this.go(this.page.locator('.stop .rung a').filter({ has: this.page.locator('b', { hasText: new RegExp(`^${escaped(stop)}$`) }) }));
  }

  nameOf(part, structure) {
    const kind = this.say(`kind-${part.kind}`);
    const { which } = part;
    const slope = structure.slopes.find(({ letter }) => letter === part.slope);
    const side = slope && this.say(`side-${slope.side}`);
    const hasTwin = structure.parts.some((twin) => twin !== part && twin.kind === part.kind && twin.which === which);
    if (which) return hasTwin ? this.say('part-which-side', { kind, which, side }) : this.say('part-which', { kind, which });
    return side ? this.say('part-side', { kind, side }) : kind;
  }

  async part(name, part, structure) {
    if (isPlain(part)) {
      await this.keep(this.button(this.say('rung-sound'), this.group(name)), 'saved-sound');
    }
    await this.go(this.link(this.say('walk-mark'), this.group(name)));
    await this.mark(part, structure);
    if (this.page.url().includes('/mark/')) await this.go(this.link(this.say('back-walk')));
  }

  async add(name, part, structure) {
    const kind = this.say(`kind-${part.kind}`);
    for (const stop of await this.stops()) {
      await this.climb(stop);
      const fold = await this.unfold(this.say('walk-add-part'));
      const kinds = fold.getByLabel(this.say('add-part-kind'));
      if (!(await kinds.locator('option').allInnerTexts()).includes(kind)) continue;
      const slope = structure.slopes.find(({ letter }) => letter === part.slope);
      await kinds.selectOption({ label: kind });
      if (slope) {
        const label = this.say('slope-name', { letter: slope.letter, side: this.say(`side-${slope.side}`) });
        await fold.getByLabel(this.say('add-part-slope')).selectOption({ label });
      }
      await fold.getByLabel(this.say('add-part-which')).fill(part.which ?? '');
      await this.go(this.button(this.say('add-part-button'), fold));
      await this.mark(part, structure);
      if (this.page.url().includes('/mark/')) await this.go(this.link(this.say('back-walk')));
      await this.group(name).waitFor();
      return;
    }
    assert.fail(`no stop takes a part of the kind ${kind}`);
  }

  /** All that a visit file says of a part, on its page. What ends at the walk comes last. */
  async mark(part, structure) {
    for (const one of part.defects ?? []) await this.defect(one);
    if (part.rung) {
      await this.choose(this.button(this.say(`rung-${part.rung}`)));
      await this.choose(this.button(this.say(`seen-${part.seen}`)));
    }
    for (const { question, answer } of part.answers ?? []) {
      await this.choose(this.button(this.say(`answer-${answer}`), this.group(this.say(`question-${question}`))));
    }
    if (part.kind === 'layers') await this.layers(structure.layers.find(({ slope }) => slope === part.slope));
    // What the book has from its own record nobody types again.
    for (const work of part.work ?? []) if (work.evidence !== 'own-record') await this.work(work);
    if (part.words) await this.words(part.words);
    if (part.gone) await this.unseen(this.say('condition-gone'));
    if (part['not-seen']) await this.unseen(this.say(`not-seen-${part['not-seen']}`));
  }

  async choose(button) {
    if ((await button.getAttribute('aria-pressed')) !== 'true') await this.go(button);
    assert.equal(await button.getAttribute('aria-pressed'), 'true', await button.innerText());
  }

  /** By the likely ones, or by what he sees. */
  async defect({ defect, extent }) {
    const name = this.say(`defect-${defect}`);
    const listed = this.page.locator('.likely').getByRole('button', { name: new RegExp(`^${escaped(name)}`) });
    for (const family of await this.page.locator('.families a').allInnerTexts()) {
      if (await listed.count()) break;
      await this.go(this.link(family));
    }
    await this.go(listed);
    const named = this.page.locator('.named').filter({ has: this.page.getByRole('heading', { name, exact: true }) });
    await this.choose(this.button(this.say(`extent-${extent}`), named));
  }

  async layers(read) {
    const coverings = read.layers.filter(({ layer }) => layer.is === 'covering');
    const fold = await this.unfold(this.say('layers-title'));
    await fold.getByLabel(this.say('layers-count')).selectOption({ label: String(coverings.length) });
    await fold.getByLabel(this.say('layers-covering')).selectOption({ label: this.say(`covering-${coverings[0].layer.of}`) });
    await fold.getByLabel(this.say('layers-learned')).selectOption({ label: this.say(`learned-${read.learned}`) });
    await fold.getByLabel(this.say('layers-where')).fill(read.spot);
    await this.keep(this.button(this.say('layers-keep')), 'saved-layers');
  }

  async work({ did, remedy, by, when, evidence }) {
    const fold = await this.unfold(this.say('work-title'));
    const label = remedy ? this.say(`remedy-${remedy}`) : this.say(`did-${did}`);
    await fold.getByLabel(this.say('work-did')).selectOption({ label });
    await fold.getByLabel(this.say('work-by')).selectOption({ label: this.say(`by-${by}`) });
    await fold.getByLabel(this.say('work-when')).fill(when);
    await fold.getByLabel(this.say('work-evidence')).selectOption({ label: this.say(`evidence-${evidence}`) });
    await this.keep(this.button(this.say('work-keep')), 'saved-work');
  }

  async words(words) {
    const fold = await this.unfold(this.say('say-it'));
    await fold.getByLabel(this.say('say-words')).fill(words);
    await this.keep(this.button(this.say('say-keep')), 'saved-words');
  }

  async unseen(why) {
    const fold = await this.unfold(this.say('mark-not-seen'));
    await this.go(this.button(why, fold));
  }
}

/** Sound and no more: one tap. */
function isPlain(part) {
  return part.rung === 'sound' && !['defects', 'answers', 'words', 'work'].some((more) => part[more]?.length);
}

function escaped(text) {
  return text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
