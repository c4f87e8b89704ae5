"""splice.py RECORDINGS.npz ALIGNMENTS.tsv TEXTS.txt OUT.npz COUNT SEED: new sentences in recorded voices, put together from the words that each
speaker to learn from has said: the longest pieces that fit, so that few joints are needed. A part of them lose the ends of words that end in
consonants, as speakers of some first languages drop them, and a part are single words. Samples 16 kHz, 16 bits."""
import random
import sys
import numpy as np
import recordings as packed

FADE = 160  # 10 ms
LONGEST = 16000 * 8
DROPPING, SINGLE = .2, .15
VOWELS = set('zero three two o oh a b c d e g p t v z day e i you to no go he she we they high low my more four are ear year were or for door floor over under '
             'number temperature pressure fever liter cuff power so now new who how details'.split())


def inventories(recordings, alignments):
    """For each speaker: a run of one to four words -> the places where it was said, as clip and samples from and to."""
    given = np.load(recordings)
    ends = np.cumsum(given['lengths'])
    clips, speakers = {}, {}
    for i, (folder, file) in enumerate(zip(given['sets'], given['files'])):
        clips[str(folder), str(file)] = (ends[i] - given['lengths'][i], int(given['lengths'][i]), int(given['firsts'][i]))
        speakers[str(folder), str(file)] = str(given['speakers'][i])
    spoken = {}
    for line in list(open(alignments))[1:]:
        folder, file, word, begin, end = line.rstrip('\n').split('\t')
        start, length, first = clips[folder, file]
        spoken.setdefault((folder, file), []).append((word, start + min(max(int(float(begin) * 16000) - first, 0), length), start + min(max(int(float(end) * 16000) - first, 0), length)))
    found = {}
    for key, words in spoken.items():
        runs = found.setdefault(speakers[key], {})
        for n in range(1, 5):
            for at in range(len(words) - n + 1):
                piece = words[at:at + n]
                if piece[-1][2] - piece[0][1] > 800 * n: runs.setdefault(tuple(w for w, _, _ in piece), []).append((piece[0][1], piece[-1][2]))
    return packed.unpacked(given['samples']), found


def pieces(words, runs, r):
    """Places for the words, the longest first but not always, and the last word of each; nothing if the speaker lacks one."""
    at, found, lasts = 0, [], []
    while at < len(words):
        sizes = [n for n in (4, 3, 2, 1) if tuple(words[at:at + n]) in runs and at + n <= len(words)]
        if not sizes: return None, None
        n = sizes[0] if r.random() < .7 else r.choice(sizes)
        found.append(r.choice(runs[tuple(words[at:at + n])]))
        lasts.append(words[at + n - 1])
        at += n
    return found, lasts


def dropped(begin, end, last, r):
    """The end of a piece without the consonant of its last word: 50 to 110 ms, at most a third of it."""
    ends_in_vowel = last in VOWELS or last[-1] in 'aiouy'
    return end if ends_in_vowel or r.random() > .75 else end - int(min(r.uniform(800, 1760), (end - begin) / 3))


def joined(samples, places, words, r):
    """The pieces after one another, at one level, faded into one another or with a pause between."""
    out = np.zeros(0, np.float32)
    gap = r.random() < .3
    if r.random() < DROPPING: places = [(b, dropped(b, e, w, r)) for (b, e), w in zip(places, words)]
    for begin, end in places:
        piece = samples[max(0, begin - FADE // 2):end + FADE // 2].astype(np.float32)
        piece = piece / (np.sqrt(np.square(piece).mean()) + 1) * 2000 * r.uniform(.75, 1.3)
        ramp = np.linspace(0, 1, FADE, dtype=np.float32)
        piece[:FADE] *= ramp
        piece[-FADE:] *= ramp[::-1]
        if len(out) == 0: out = piece
        elif gap and r.random() < .6: out = np.concatenate([out, np.zeros(r.randint(400, 5000), np.float32), piece])
        else:
            out[-FADE:] += piece[:FADE]
            out = np.concatenate([out, piece[FADE:]])
    return np.clip(out, -32767, 32767).astype(np.int16)


def main(recordings, alignments, texts, out, count, seed):
    r = random.Random(seed)
    samples, speakers = inventories(recordings, alignments)
    sentences = [line.split() for line in open(texts) if line.strip()]
    human = sorted(s for s in speakers if '_' not in s)
    made = sorted(s for s in speakers if '_' in s)
    clips, said, by = [], [], []
    tried = 0
    while len(clips) < count and tried < 60 * count:
        tried += 1
        speaker = r.choice(human if r.random() < .8 else made)
        single = r.random() < SINGLE
        sentence = list(r.choice([run for run in speakers[speaker] if len(run) == 1])) if single else r.choice(sentences)
        places, lasts = pieces(sentence, speakers[speaker], r)
        if places is None or len(places) < 2 and not single: continue
        clip = joined(samples, places, lasts, r)
        if len(clip) < LONGEST: clips.append(clip); said.append(' '.join(sentence)); by.append('human' if speaker in human else 'made')
    np.savez(out, samples=np.concatenate(clips), lengths=np.array([len(c) for c in clips]), words=np.array(said), voices=np.array(by))
    print(len(clips), 'clips spliced,', by.count('human'), 'of human speakers,', round(sum(len(c) for c in clips) / 57600000, 1), 'h, of', tried, 'tried')


if __name__ == '__main__': main(*sys.argv[1:5], int(sys.argv[5]), int(sys.argv[6]))
