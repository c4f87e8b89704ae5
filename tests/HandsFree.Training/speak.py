"""Speaks sentences with espeak-ng on all processors, and keeps the samples (16 kHz, 16 bits) in one file. DROPPING of them are spoken as by
speakers who drop the final consonants of words (rules from general knowledge of phonology, no source).
speak.py TEXTS OUT.npz SEED SECONDS: stops after that long. ESPEAK names the program where it is not on the path."""
import io
import os
import random
import re
import subprocess
import sys
import time
import wave
from concurrent.futures import ThreadPoolExecutor
import numpy as np

DROPPING = .5
ESPEAK = os.environ.get('ESPEAK', 'espeak-ng').split()
# kept apart for measuring: the accents en-gb-scotland and en-us-nyc, the variants whose names begin with "k" or "q"
ACCENTS = ['en-us'] * 6 + ['en-gb', 'en-gb-x-rp', 'en-029', 'en-gb-x-gbclan', 'en-gb-x-gbcwmd']
VARIANTS = ('m1 m2 m3 m4 m5 m6 m7 m8 f1 f2 f3 f4 f5 Alex Alicia Andrea Andy Annie Denis Diogo Gene Gene2 Henrique Hugo Jacky Lee Marco Mario '
            'Michael Mike Nguyen RicishayMax RicishayMax2 Storm Tweaky adam anika announcer antonio aunty belinda benjamin boris caleb david ed '
            'edward edward2 grandma grandpa gustave iven iven2 iven3 iven4 john linda marcelo max michel miguel norbert pablo paul pedro rob '
            'robert robosoft robosoft3 robosoft5 sandro shelby steph steph2 steph3 travis victor zac').split()


def wav_of(command):
    done = subprocess.run(command, capture_output=True, check=True).stdout
    with wave.open(io.BytesIO(done)) as w:
        rate = w.getframerate()
        samples = np.frombuffer(w.readframes(1 << 30), np.int16).astype(np.float32)
    return at_16000(samples, rate)


def at_16000(samples, rate):
    if rate == 16000: return samples.astype(np.int16)
    spectrum = np.fft.rfft(samples)
    count = int(len(samples) * 16000 / rate)
    most = count // 2 + 1
    spectrum = spectrum[:most] if len(spectrum) > most else np.pad(spectrum, (0, most - len(spectrum)))
    return np.clip(np.fft.irfft(spectrum, count) * 16000 / rate, -32767, 32767).astype(np.int16)


def trimmed(samples):
    """Without the synthesiser's own silence, but for 30 ms."""
    loud = np.flatnonzero(np.abs(samples.astype(np.int32)) > 150)
    return samples[:0] if len(loud) == 0 else samples[max(0, loud[0] - 480):loud[-1] + 480]


def without_finals(phonemes, r):
    """Phonemes of espeak-ng, words parted by blanks, as someone says them who drops final consonants: clusters lose their last one nearly
    always, single consonants often, by their kind and by the speaker."""
    lax = r.uniform(.4, 1)
    often = {'stop': .85 * lax, 'fricative': .7 * lax, 'nasal': .35 * lax, 'liquid': .5 * lax}
    kinds = {**dict.fromkeys(('t', 'd', 'k', 'g', 'p', 'b', 'tS', 'dZ'), 'stop'), **dict.fromkeys(('s', 'z', 'f', 'v', 'T', 'D', 'S', 'Z'), 'fricative'),
             **dict.fromkeys(('m', 'n', 'N'), 'nasal'), 'l': 'liquid'}
    said = []
    for word in phonemes.split():
        for _ in range(2):
            final = re.search(r'(tS|dZ|[tdkgpbszfvTDSZmnNl])$', word)
            if not final or not re.search('[aeiouAEIOUV@0-9]', word[:final.start()]): break
            cluster = re.search(r'[tdkgpbszfvTDSZmnNl]$', word[:final.start()])
            if r.random() < (max(.8 * lax, often[kinds[final[1]]]) if cluster else often[kinds[final[1]]]): word = word[:final.start()]
            else: break
        said.append(word)
    return ' '.join(said)


def speak(text, r):
    voice = r.choice(ACCENTS) + '+' + r.choice(VARIANTS)
    try:
        if r.random() < DROPPING:
            found = subprocess.run(ESPEAK + ['-v', voice, '-q', '-x', text], capture_output=True, check=True, text=True).stdout
            text = '[[' + without_finals(found, r) + ']]'
        return trimmed(wav_of(ESPEAK + ['-v', voice, '-s', str(r.randint(110, 240)), '-p', str(r.randint(10, 90)), '--stdout', text]))
    except (subprocess.CalledProcessError, wave.Error, EOFError): return np.zeros(0, np.int16)


def main(texts, out, seed, seconds):
    lines = [line.strip() for line in open(texts) if line.strip()]
    end = time.time() + seconds

    def one(i):
        if time.time() > end: return None
        clip = speak(lines[i], random.Random(seed * 1000003 + i))
        return (i, clip) if 800 < len(clip) < 16000 * 9 else None

    with ThreadPoolExecutor(os.cpu_count()) as pool: spoken = [x for x in pool.map(one, range(len(lines))) if x]
    np.savez(out, samples=np.concatenate([c for _, c in spoken]), lengths=np.array([len(c) for _, c in spoken]),
             words=np.array([lines[i] for i, _ in spoken]))
    print(len(spoken), 'clips of', len(lines), 'texts,', round(sum(len(c) for _, c in spoken) / 16000 / 3600, 1), 'h', flush=True)


if __name__ == '__main__': main(sys.argv[1], sys.argv[2], int(sys.argv[3]), float(sys.argv[4]))
