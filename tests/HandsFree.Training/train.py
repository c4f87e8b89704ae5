"""train.py WORDS.txt RECORDINGS.npz SPOKEN.npz[,SPOKEN.npz...] EMBEDDING.npz|BEFORE.pt[:BEFORE-WORDS.txt] OUT SECONDS SEED
Trains for so many seconds, prints the curve, writes OUT.pt (the averaged weights) and what was heard of the recordings kept apart.
PLAIN: how many seconds at the beginning take the clips as they are (without that it does not find its way for minutes). TOP: the
highest learning rate where it goes on from weights. PART: from where to where on the curve of the learning rate, "0,1" for all of it.
STEPS ends it earlier; BATCH is how many clips a step takes."""
import copy
import math
import os
import random
import sys
import time
import numpy as np
import torch
import network
import sound
import vocabulary


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


def recordings(path, r):
    """Clips to learn from, by kind, and clips kept apart, by set."""
    given = np.load(path)
    samples, at, apart = unpacked(given['samples']), 0, {}
    natural = {}
    for length, words, speaker, folder, kept in zip(given['lengths'], given['words'], given['speakers'], given['sets'], given['apart']):
        clip = (samples[at:at + length], str(words), str(speaker))
        at += length
        if kept: apart.setdefault(str(folder), []).append(clip)
        else: natural.setdefault('human' if str(folder).startswith('an4') else 'synthetic', []).append(clip)
    human, made = natural['human'], natural['synthetic']
    return {'human': human, 'human pairs': list(pairs(human, r, 2500)), 'made': made, 'made pairs': list(pairs(made, r, 2500))}, apart


# how much of what is learned from is of which kind; what there is none of goes to the others
SHARES = {'human': .17, 'human pairs': .05, 'made': .10, 'made pairs': .03, 'spliced': .25, 'spoken': .40}


def drawn(groups, count, r):
    """So many places of clips, by the shares."""
    whole = sum(SHARES[g] for g, places in groups.items() if places)
    return [r.choice(places) for g, places in groups.items() if places for _ in range(round(count * SHARES[g] / whole))]


def with_words(state, before, words):
    """Weights for more words: a new one begins as "any other word"."""
    places = [0, 1] + [before.index(w) + 2 if w in before else 1 for w in words]
    new = [i for i, w in enumerate(words) if w not in before]
    state = dict(state, **{k: state[k][places].clone() for k in ('out.weight', 'out.bias')})
    for i in new: state['out.bias'][i + 2] -= 2
    return state


def greedy(logits, words):
    best, said, before = logits.argmax(-1).tolist(), [], 0
    for k in best:
        if k != before and k: said.append('<x>' if k == 1 else words[k - 2])
        before = k
    return ' '.join(said)


def main(words_file, recorded, spoken, start, out, seconds, seed):
    device = 'cuda' if torch.cuda.is_available() else 'cpu'
    size = int(os.environ.get('BATCH', 256 if device == 'cuda' else 8))
    torch.manual_seed(seed)
    r = random.Random(seed)
    words = vocabulary.read(words_file)
    natural, apart = recordings(recorded, r)
    clips = [c[0] for group in natural.values() for c in group]
    texts = [c[1] for group in natural.values() for c in group]
    kinds = [g for g, group in natural.items() for _ in group]
    parts = [np.load(path) for path in spoken.split(',')]
    bulk = np.concatenate([p['samples'] for p in parts])
    bulk_lengths = np.concatenate([p['lengths'] for p in parts])
    texts += [str(t) for p in parts for t in p['words']]
    kinds += ['spliced' if 'voices' in p else 'spoken' for p in parts for _ in p['words']]
    lengths = np.concatenate([[len(c) for c in clips], bulk_lengths])
    library = sound.Sound(np.concatenate(clips + [bulk]), lengths, device, seed)
    labels = [vocabulary.labels(t, words) for t in texts]
    net = network.Network(len(words)).to(device)
    if start.endswith('.npz'): net.load_embedding(start); net.to(device)
    else:
        weights, _, before = start.partition(':')
        state = {k: v.float() for k, v in torch.load(weights, map_location=device).items()}
        net.load_state_dict(with_words(state, vocabulary.read(before), words) if before else state)
    mean = copy.deepcopy(net).eval()
    trunk = [p for n, p in net.named_parameters() if n.startswith(('trunk', 'last'))]
    rest = [p for n, p in net.named_parameters() if not n.startswith(('trunk', 'last'))]
    top = 1.5e-3 if start.endswith('.npz') else float(os.environ.get('TOP', 8e-4))
    best = torch.optim.AdamW([{'params': trunk, 'k': .3}, {'params': rest, 'k': 1.}], top, weight_decay=.01)
    print(len(texts), 'clips', round(float(lengths.sum()) / 16000 / 3600, 1), 'h;', sum(p.numel() for p in net.parameters()), 'weights', flush=True)
    groups = {g: [i for i, k in enumerate(kinds) if k == g and labels[i]] for g in SHARES}
    print({g: len(places) for g, places in groups.items()}, flush=True)
    plain = float(os.environ.get('PLAIN', 0))
    first, last = (float(part) for part in os.environ.get('PART', '0,1').split(','))
    most = int(os.environ.get('STEPS', 1 << 30))
    begun, step, loss_mean = time.time(), 0, None
    while time.time() - begun < seconds and step < most:
        order = sorted(drawn(groups, size * 500, r), key=lambda i: lengths[i] * (1 + .15 * r.random()))
        batches = [order[i:i + size] for i in range(0, len(order), size)]
        r.shuffle(batches)
        for batch in batches:
            done = (time.time() - begun) / seconds
            if done >= 1 or step >= most: break
            done = first + (last - first) * done
            for group in best.param_groups: group['lr'] = group['k'] * top * min(1, (step + 1) / 300) * (.5 + .5 * math.cos(math.pi * done)) + 1e-6
            net.train()
            with torch.no_grad(): mel = (library.plain if time.time() - begun < plain else library.altered)(torch.tensor(batch, device=device))
            meant = [[] if library.silent[i] else labels[k] for i, k in enumerate(batch)]
            with torch.autocast(device, torch.bfloat16, enabled=device == 'cuda'): logits = net(mel, library.rows.clamp(1, (mel.shape[1] - 72) // 4))
            y = torch.tensor([k for m in meant for k in m], device=device)
            rows = library.rows.clamp(1, logits.shape[1])
            loss = torch.nn.functional.ctc_loss(logits.float().log_softmax(-1).transpose(0, 1), y, rows, torch.tensor([len(m) for m in meant]), zero_infinity=True)
            best.zero_grad()
            loss.backward()
            torch.nn.utils.clip_grad_norm_(net.parameters(), 2.)
            best.step()
            step += 1
            keep = min(.999, 1 - 1 / (step + 1))
            with torch.no_grad():
                for a, b in zip(mean.parameters(), net.parameters()): a.lerp_(b, 1 - keep)
            if loss_mean is None or step % 50 == 0:
                value = loss.item()
                loss_mean = value if loss_mean is None else .9 * loss_mean + .1 * value
            if step % 250 == 0:
                print(f'step {step} loss {loss_mean:.3f} seconds {time.time() - begun:.0f}', flush=True)
            if step % 3000 == 0:
                torch.save(mean.state_dict(), out + '.pt')
                measure(mean, apart, words, device, 0)
    torch.save(mean.state_dict(), out + '.pt')
    print('steps', step, 'loss', loss_mean, 'seconds', round(time.time() - begun))
    measure(mean, apart, words, device, 12)


def measure(net, apart, words, device, show):
    """Whole strings heard exactly, greedily, without any grammar, of speakers never heard."""
    for name, clips in sorted(apart.items()):
        library = sound.Sound(np.concatenate([c[0] for c in clips]), np.array([len(c[0]) for c in clips]), device, 1)
        right, wrong = 0, []
        with torch.no_grad():
            for i, clip in enumerate(clips):
                said = greedy(net(library.plain(torch.tensor([i], device=device)))[0].float(), words)
                meant = ' '.join('<x>' if k == 1 else words[k - 2] for k in vocabulary.labels(clip[1], words))
                right += said == meant
                if said != meant: wrong.append(f'{meant} -> {said}')
        print(f'   {name}: {right} of {len(clips)} ({100 * right / len(clips):.1f} %)', '; '.join(wrong[:show]), flush=True)


if __name__ == '__main__': main(*sys.argv[1:6], float(sys.argv[6]), int(sys.argv[7]))
