"""prepare.py AUDIO WORDS.txt OURS.txt OUT_FOLDER COUNT PROSE...: packs the recordings (8 bits mu-law) and writes the texts to be spoken.
Every third speaker in order of name is kept apart."""
import os
import random
import sys
import wave
import numpy as np
import texts

HOMOPHONES = set("too for fore won ate wait bee be see sea buy bye hole know knot rite write red hour our sun their eye aye tow toe "
                 "read pain pane passed hi high by here hear owe heel heal sea tea for".split())


def packed(path):
    with wave.open(path) as w:
        assert w.getframerate() == 16000 and w.getnchannels() == 1
        x = np.frombuffer(w.readframes(1 << 30), np.int16).astype(np.float32) / 32768
    y = np.sign(x) * np.log1p(255 * np.abs(x)) / np.log(256)
    return np.round((y + 1) * 127.5).astype(np.uint8)


def trimmed(mu):
    """Without the quiet at both ends but for 60 ms, by the energy of 20 ms; and how many samples went at the beginning."""
    y = mu.astype(np.float32) / 127.5 - 1
    x = np.sign(y) * (256 ** np.abs(y) - 1) / 255
    power = np.array([np.square(x[i:i + 320]).mean() for i in range(0, len(x), 320)])
    loud = np.flatnonzero(power > max(power.max() * 10 ** -3.6, np.percentile(power, 10) * 4))
    first = max(0, loud[0] * 320 - 960)
    return mu[first:loud[-1] * 320 + 1280], first


def rows(audio):
    """Folder, file, speaker, words of each recording, and whether its speaker is kept apart."""
    for folders in (('an4-numbers', 'an4-spelled'), ('dictation-synthetic', 'dialogue-synthetic')):
        found = [(f, *line.rstrip('\n').split('\t')[:3]) for f in folders for line in list(open(f'{audio}/{f}/transcripts.tsv'))[1:]]
        order = sorted({speaker for _, _, speaker, _ in found})
        yield from ((*row, order.index(row[2]) % 3 == 0) for row in found)


def main(audio, words_file, ours_file, out, count, prose_files):
    samples, lengths, words, speakers, sets, apart, files, firsts = [], [], [], [], [], [], [], []
    for folder, file, speaker, said, kept in rows(audio):
        clip, first = trimmed(packed(f'{audio}/{folder}/{file}'))
        samples.append(clip); lengths.append(len(clip)); words.append(said.lower()); speakers.append(speaker)
        sets.append(folder); apart.append(kept); files.append(file); firsts.append(first)
    print('kept apart:', ' '.join(sorted({s for s, kept in zip(speakers, apart) if kept})))
    np.savez_compressed(f'{out}/recordings.npz', samples=np.concatenate(samples), lengths=lengths, words=words, speakers=speakers, sets=sets, apart=apart, files=files,
                        firsts=firsts)
    known = {line.strip() for line in open(words_file)}
    ours = [line.strip() for line in open(ours_file) if line.strip()]
    foreign = [w.strip().lower() for w in open('/usr/share/dict/words') if w.strip().isalpha() and w.strip().islower()]
    foreign = [w for w in foreign if w not in known and w not in HOMOPHONES and 2 < len(w) < 12]
    with open(f'{out}/texts.txt', 'w') as f:
        for text in texts.draw(count, ours, sorted(known), texts.prose_of(prose_files), foreign, 1): f.write(text + '\n')


if __name__ == '__main__': main(*sys.argv[1:5], int(sys.argv[5]), sys.argv[6:])
