"""The network's outputs: 0 blank, 1 any other word, 2... the words of the grammars in order."""
# one sound, two spellings: what is written so is labelled so
SAME = {'o': 'oh', 'too': 'to'}


def read(path): return [line.strip() for line in open(path) if line.strip()]


def labels(text, words):
    if not isinstance(words, dict): words = index(words)
    return [words.get(SAME.get(w, w), 1) for w in text.lower().split()]


_known = {}


def index(words):
    key = len(words)
    if key not in _known: _known[key] = {w: i + 2 for i, w in enumerate(words)}
    return _known[key]
