"""The network's outputs: 0 blank, 1 any other word, 2... the words of words.txt in order. Words of one sound share a label (same.tsv)."""


def read(path): return [line.strip() for line in open(path) if line.strip()]


class Labels:
    def __init__(self, words_file, same_file):
        self.words = read(words_file)
        self.places = {w: i + 2 for i, w in enumerate(self.words)}
        self.same = dict(line.split('\t') for line in read(same_file)[1:])

    def of(self, text): return [self.places.get(self.same.get(w, w), 1) for w in text.lower().split()]
