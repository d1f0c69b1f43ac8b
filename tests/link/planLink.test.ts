/** A plan in an address: short, the same everywhere, and harmless whatever has become of it. */
import { createHash } from 'node:crypto';
import { inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DICTIONARY_1 } from '../../src/link/dictionary1.ts';
import { isLink } from '../../src/link/isLink.ts';
import { linkOf, readLink, LONGEST_LINK } from '../../src/link/planLink.ts';
import { MOST_CHARACTERS } from '../../src/model/plan/limits.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { planOf, sample, SAMPLES } from '../plans/build.ts';
import { SOUND } from '../wells/sound.ts';
import { OLD_LINKS } from './oldLinks.ts';

/** SHA-256 of the text, FIPS 180-4. */
const DICTIONARY_HASH = '44619ce4902f9df2625312e0543d4e9d866ba59e4989536e6c7173fe68fce7d9';

const textIn = (link: string): string => {
  const reading = readLink(link);
  if (!reading.ok) throw new Error(reading.why);
  return reading.text;
};

describe('a link', () => {
  // The samples are in the text that plans are like; these wells are not.
  test.each([
    ...SOUND.map(({ name, plan }) => [name, plan] as const),
    ...SAMPLES.map((name) => [name, sample(name)] as const),
  ])('of %s is under 600 letters, and gives the plan back as typed', (_, json) => {
    const plan = planOf(json);
    const link = linkOf(plan);
    expect(link.length).toBeLessThan(600);
    expect(link).toMatch(/^w1\.[\w-]+$/);
    expect(JSON.parse(textIn(`#${link}`))).toEqual(plan);
  });
  test('of any plan gives it back', () => {
    fc.assert(
      fc.property(anyPlan, (json) => {
        const plan = planOf(json);
        expect(textIn(linkOf(plan))).toBe(JSON.stringify(plan));
      }),
      { numRuns: 150, seed: 3 },
    );
  });
  test('of any words gives them back, whatever their language', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (title) => {
        expect(JSON.parse(textIn(linkOf({ title })))).toEqual(JSON.parse(JSON.stringify({ title })));
      }),
      { numRuns: 200, seed: 4 },
    );
  });
  // RFC 1951: zlib, which is another's program, unpacks it.
  test('is unpacked by another program with the same dictionary', () => {
    const plan = sample('slate-hollow') as object;
    const bytes = Buffer.from(linkOf(plan).slice(3), 'base64url').subarray(3);
    const dictionary = Buffer.from(DICTIONARY_1);
    expect(inflateRawSync(bytes, { dictionary }).toString()).toBe(JSON.stringify(plan));
  });
});

describe('links that were made before', () => {
  test.each(OLD_LINKS)('open for ever: %s', (title, link) => {
    expect((JSON.parse(textIn(link)) as { title: string }).title).toBe(title);
  });
  test('are made with a text that never changes', () => {
    expect(createHash('sha256').update(DICTIONARY_1).digest('hex')).toBe(DICTIONARY_HASH);
  });
});

describe('whatever became of it', () => {
  const link = linkOf(planOf(sample('tamarack-ridge')));
  test('one letter changed is told as damage', () => {
    for (let at = 3; at < link.length; at++) {
      const other = link[at] === 'A' ? 'B' : 'A';
      const reading = readLink(link.slice(0, at) + other + link.slice(at + 1));
      // The last letter may hold bits that no byte has.
      if (at === link.length - 1 && reading.ok) continue;
      expect(reading, `at ${at}`).toMatchObject({ ok: false });
    }
  });
  test('cut short, it is told as damage', () => {
    for (let at = 3; at < link.length - 1; at++) expect(readLink(link.slice(0, at)).ok).toBe(false);
  });
  test('of a later form it says so, and what is none is none', () => {
    expect(readLink('#w2.AAAA')).toEqual({ ok: false, why: 'newer' });
    expect(readLink('#findings')).toEqual({ ok: false, why: 'none' });
    expect(readLink('')).toEqual({ ok: false, why: 'none' });
    expect(readLink('#w0.AAAA')).toEqual({ ok: false, why: 'damaged' });
    expect([isLink('#w1.x'), isLink('w12.'), isLink('#wells')]).toEqual([true, true, false]);
  });
  test('what would swell beyond any plan is stopped, and too many letters are not looked at', () => {
    const bomb = linkOf({ title: 'a'.repeat(MOST_CHARACTERS + 10) });
    expect(bomb.length).toBeLessThan(LONGEST_LINK);
    expect(readLink(bomb)).toEqual({ ok: false, why: 'tooLong' });
    expect(readLink(`w1.${'A'.repeat(LONGEST_LINK + 1)}`)).toEqual({ ok: false, why: 'tooLong' });
  });
  test('any letters end in a plan’s text or in a reason', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[\w-]{0,400}$/), (letters) => {
        expect(readLink(`w1.${letters}`).ok).toBe(false);
      }),
      { numRuns: 500, seed: 6 },
    );
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), (text) => {
        expect(() => readLink(text)).not.toThrow();
      }),
      { numRuns: 300, seed: 7 },
    );
  });
});
