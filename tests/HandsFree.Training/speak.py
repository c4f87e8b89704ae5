"""Speaks sentences with flite and espeak-ng on all processors, and keeps the samples (16 kHz, 16 bits) in one file.
speak.py TEXTS OUT.npz SEED SECONDS: stops after that long. FLITE and ESPEAK name the programs, where they are not on the path."""
import io
import os
import random
import subprocess
import sys
import time
import wave
from concurrent.futures import ThreadPoolExecutor
import numpy as np

FLITE = os.environ.get('FLITE', 'flite').split()
ESPEAK = os.environ.get('ESPEAK', 'espeak-ng').split()
# kept apart for measuring: the accents en-gb-scotland and en-us-nyc, the variants whose names begin with "k" or "q", flite's rms
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


def speak(text, r):
    if r.random() < .4:
        voice = r.choice(['slt', 'slt', 'awb', 'awb', 'kal16', 'kal'])
        command = FLITE + ['-voice', voice, '--setf', f'duration_stretch={r.uniform(.7, 1.35):.2f}',
                           '--setf', f'int_f0_target_mean={r.uniform(80, 240):.0f}', '--setf', f'int_f0_target_stddev={r.uniform(5, 35):.0f}',
                           '-t', text, '-o', '/dev/stdout']
    else:
        voice = r.choice(ACCENTS) + '+' + r.choice(VARIANTS)
        command = ESPEAK + ['-v', voice, '-s', str(r.randint(110, 240)), '-p', str(r.randint(10, 90)), '--stdout', text]
    try: return trimmed(wav_of(command))
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
