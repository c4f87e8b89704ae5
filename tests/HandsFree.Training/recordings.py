"""The recordings that prepare.py packed, as clips to learn from and clips kept apart."""
import numpy as np


def unpacked(mu):
    """8 bits of mu-law to 16 bits."""
    y = mu.astype(np.float32) / 127.5 - 1
    return (np.sign(y) * (256 ** np.abs(y) - 1) / 255 * 32767).astype(np.int16)


def pairs(clips, r, count):
    """Two clips of one speaker after one another, with a pause: longer strings than were recorded."""
    by = {}
    for clip in clips: by.setdefault(clip[2], []).append(clip)
    for _ in range(count):
        speaker = r.choice(sorted(by))
        a, b = r.choice(by[speaker]), r.choice(by[speaker])
        if len(a[0]) + len(b[0]) > 16000 * 8: continue
        yield (np.concatenate([a[0], np.zeros(r.randint(200, 5000), np.int16), b[0]]), a[1] + ' ' + b[1], speaker)


def read(path, r):
    """Clips (samples, words, speaker) to learn from, by kind, and clips kept apart, by set."""
    given = np.load(path)
    samples, at, apart, natural = unpacked(given['samples']), 0, {}, {}
    for length, words, speaker, folder, kept in zip(given['lengths'], given['words'], given['speakers'], given['sets'], given['apart']):
        clip = (samples[at:at + length], str(words), str(speaker))
        at += length
        if kept: apart.setdefault(str(folder), []).append(clip)
        else: natural.setdefault('human' if str(folder).startswith('an4') else 'made', []).append(clip)
    human, made = natural['human'], natural['made']
    return {'human': human, 'human pairs': list(pairs(human, r, 2500)), 'made': made, 'made pairs': list(pairs(made, r, 2500))}, apart
