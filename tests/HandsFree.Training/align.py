"""align.py AUDIO OUT.tsv [EVERY]: when each word of the recordings to learn from begins and ends, found by PocketSphinx with a grammar of that one
sentence (Debian pocketsphinx, pocketsphinx-en-us). A recording with a word that its dictionary lacks is left out. EVERY takes only each so many-th of them."""
import os
import re
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
import prepare


def words_of(path, said):
    with tempfile.NamedTemporaryFile('w', suffix='.gram') as grammar:
        grammar.write('#JSGF V1.0;\ngrammar one;\npublic <one> = ' + ' '.join(said) + ' ;\n')
        grammar.flush()
        done = subprocess.run(['pocketsphinx_continuous', '-infile', path, '-jsgf', grammar.name, '-time', 'yes', '-logfn', os.devnull,
                               '-beam', '1e-120', '-wbeam', '1e-100', '-pbeam', '1e-120', '-remove_noise', 'no'], capture_output=True, text=True)
    found = []
    for line in done.stdout.splitlines():
        time = re.fullmatch(r"([a-z']+)(?:\(\d+\))? (\d+\.\d+) (\d+\.\d+) \d+\.\d+", line.strip())
        if time: found.append((time[1], float(time[2]), float(time[3]) + .01))
    return found if [w for w, _, _ in found] == said else []


def main(audio, out, every=1):
    rows = [(folder, file, said) for folder, file, speaker, said, apart in prepare.rows(audio) if not apart and folder != 'an4-spelled'][::every]
    with ThreadPoolExecutor(os.cpu_count()) as pool: found = list(pool.map(lambda r: words_of(f'{audio}/{r[0]}/{r[1]}', r[2].lower().split()), rows))
    with open(out, 'w') as f:
        f.write('folder\tfile\tword\tbegin\tend\n')
        for (folder, file, _), words in zip(rows, found):
            for word, begin, end in words: f.write(f'{folder}\t{file}\t{word}\t{begin:.2f}\t{end:.2f}\n')
    print(sum(1 for w in found if w), 'of', len(rows), 'recordings aligned')


if __name__ == '__main__': main(*sys.argv[1:3], *map(int, sys.argv[3:]))
