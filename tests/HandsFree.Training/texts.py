"""Sentences to be spoken: of the grammars (drawn by the benchmarks' command "sentences"), strings of numbers, single words,
sentences that are none of ours, and sentences of ours with a foreign word in them."""
import random
import re

DIGITS = 'one two three four five six seven eight nine'.split()
TEENS = 'ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split()
TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split()
LETTERS = [c for c in 'abcdefghijklmnopqrstuvwxyz']


def number(r):
    k = r.random()
    if k < .55: return r.choice(DIGITS + ['oh', 'zero', 'zero'])
    if k < .7: return r.choice(TEENS)
    if k < .95: return r.choice(TENS) + (' ' + r.choice(DIGITS) if r.random() < .6 else '')
    return r.choice(DIGITS[:5]) + ' hundred' + r.choice(['', ' ' + r.choice(TEENS), ' and ' + r.choice(TENS + DIGITS)])


def string_of_numbers(r): return ' '.join(number(r) for _ in range(r.choice([1, 2, 2, 3, 3, 4, 5, 6, 7])))


def none_of_ours(r, prose, foreign):
    k = r.random()
    if k < .35:
        words = r.choice(prose)
        at = r.randrange(max(1, len(words) - 3))
        return ' '.join(words[at:at + r.randint(1, 8)])
    if k < .6: return ' '.join(r.choice(foreign) for _ in range(r.randint(1, 5)))
    if k < .8: return ' '.join(r.choice(LETTERS) for _ in range(r.randint(2, 9)))
    return r.choice(foreign)


def draw(count, ours, words, prose, foreign, seed):
    r = random.Random(seed)
    with_word = {}
    for sentence in sorted(set(ours)):
        for word in set(sentence.split()): with_word.setdefault(word, []).append(sentence)
    rare = sorted(with_word)
    for _ in range(count):
        k = r.random()
        if k < .28: yield r.choice(ours)
        elif k < .46: yield r.choice(with_word[r.choice(rare)])  # each word as often as each other
        elif k < .60: yield string_of_numbers(r)
        elif k < .70: yield r.choice(words)
        elif k < .80:
            mixed = r.choice(ours).split()
            mixed[r.randrange(len(mixed))] = r.choice(foreign)
            yield ' '.join(mixed)
        else: yield none_of_ours(r, prose, foreign)


def prose_of(paths):
    """Lines of prose in a text, as lists of lower-case words."""
    found = []
    for path in paths:
        for line in re.split(r'[.\n;:|!?]', open(path, encoding='utf-8').read().lower()):
            words = re.findall(r"[a-z']+", line)
            if len(words) > 2: found.append(words)
    return found
