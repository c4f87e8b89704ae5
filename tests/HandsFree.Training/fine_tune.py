"""fine_tune.py SECONDS PART FROM.onnx|FROM.pt TEMPLATE.onnx OUT.pt SEED: CTC on the words' encoder, everything trained on. PART: from where to
where on the curve of the learning rate ("0,1" all of it; "0,.5" and then ".5,1" in two goes). Learns from recordings.npz (prepare.py),
spliced.npz (splice.py), voices.npz (voices.py) and spoken.npz (speak.py) in this folder, with words.txt and same.tsv; prints their counts.
TOP: the highest learning rate of the linear layer (the encoder's is a quarter of it). STEPS ends it earlier, BATCH is clips a step."""
import copy
import math
import os
import random
import sys
import time
import numpy as np
import torch
from torch import nn
import recordings
import sound
import vocabulary
import words_encoder

# how much of what is learned from is of which kind
SHARES = {'human': .15, 'human pairs': .05, 'made': .05, 'made pairs': .02, 'spliced': .21, 'voices': .38, 'spoken': .14}


class Net(nn.Module):
    def __init__(self, path):
        super().__init__()
        self.e, weight, bias = words_encoder.load(path)
        self.d = nn.Dropout(.1)
        self.o = nn.Linear(*reversed(weight.shape))
        with torch.no_grad():
            self.o.weight.copy_(weight)
            self.o.bias.copy_(bias)

    def forward(self, x, rows, hide=False):
        inside = (torch.arange(x.shape[1], device=x.device)[None] < (rows * 384 + 900)[:, None].to(x.device)).long()
        h = self.e(x, attention_mask=inside).last_hidden_state
        return self.o(self.d(self.hidden(h) if hide else h))

    @staticmethod
    def hidden(h):
        """With two runs of up to eight rows hidden."""
        n, t, _ = h.shape
        place = torch.arange(t, device=h.device)[None]
        for _ in range(2):
            at, wide = torch.rand(n, device=h.device) * t, torch.rand(n, device=h.device) * 8
            h = h * ~((place >= at[:, None]) & (place < (at + wide)[:, None]))[..., None]
        return h


def rows_of(samples):
    """Rows that the encoder's convolutions make of so many samples."""
    for width, step in ((127, 64), (7, 3), (3, 2)): samples = torch.div(samples - width, step, rounding_mode='floor') + 1
    return samples


def library(labels, device, seed):
    """All sound to learn from, its labels and the places of each kind."""
    natural, _ = recordings.read('recordings.npz', random.Random(1))
    clips = [c for group in natural.values() for c in group]
    samples, lengths = [np.concatenate([c[0] for c in clips])], [len(c[0]) for c in clips]
    texts, kinds = [c[1] for c in clips], [g for g, group in natural.items() for _ in group]
    for kind in ('spliced', 'voices', 'spoken'):
        p = np.load(kind + '.npz')
        samples.append(p['samples']); lengths += p['lengths'].tolist(); texts += [str(t) for t in p['words']]; kinds += [kind] * len(p['words'])
    meant = [labels.of(t) for t in texts]
    places = {g: [i for i, k in enumerate(kinds) if k == g and meant[i]] for g in SHARES}
    print({g: len(v) for g, v in places.items()}, round(sum(lengths) / 57.6e6, 1), 'h', flush=True)
    assert all(places.values()), 'a kind of clips is missing'
    return sound.Sound(np.concatenate(samples), np.array(lengths), device, seed), np.array(lengths), meant, places


def main(seconds, part, start, template, out, seed):
    device = 'cuda' if torch.cuda.is_available() else 'cpu'
    torch.manual_seed(seed)
    r = random.Random(seed)
    lib, lengths, meant, places = library(vocabulary.Labels('words.txt', 'same.tsv'), device, seed)
    net = Net(template if start.endswith('.pt') else start).to(device)
    if start.endswith('.pt'): net.load_state_dict({k: v.float() for k, v in torch.load(start, map_location=device).items()})
    mean = copy.deepcopy(net).eval()
    top, size, most = float(os.environ.get('TOP', '4e-4')), int(os.environ.get('BATCH', '128')), int(os.environ.get('STEPS', 1 << 30))
    best = torch.optim.AdamW([{'params': net.e.parameters(), 'k': .25}, {'params': net.o.parameters(), 'k': 1.}], top, weight_decay=.01)
    begun, step, loss_mean = time.time(), 0, None
    while time.time() - begun < seconds and step < most:
        order = sorted([r.choice(v) for g, v in places.items() for _ in range(round(size * 100 * SHARES[g]))], key=lambda i: lengths[i] * (1 + .15 * r.random()))
        batches = [order[i:i + size] for i in range(0, len(order), size)]
        r.shuffle(batches)
        for batch in batches:
            done = (time.time() - begun) / seconds
            if done >= 1 or step >= most: break
            done = part[0] + (part[1] - part[0]) * done
            for group in best.param_groups: group['lr'] = group['k'] * top * min(1, (step + 1) / 300) * (.5 + .5 * math.cos(math.pi * done)) + 1e-6
            net.train()
            with torch.no_grad(): x = lib.altered(torch.tensor(batch, device=device))
            rows = rows_of(torch.clamp(lib.whole, max=x.shape[1])).clamp(min=1)
            labels = [[] if lib.silent[i] else meant[k] for i, k in enumerate(batch)]
            with torch.autocast(device, torch.bfloat16, enabled=device == 'cuda'): logits = net(x, rows.to(device), True)
            y = torch.tensor([k for m in labels for k in m], device=device)
            loss = nn.functional.ctc_loss(logits.float().log_softmax(-1).transpose(0, 1), y, rows.clamp(max=logits.shape[1]).cpu(), torch.tensor([len(m) for m in labels]), zero_infinity=True)
            best.zero_grad()
            loss.backward()
            nn.utils.clip_grad_norm_(net.parameters(), 2.)
            best.step()
            step += 1
            keep = min(.999, 1 - 1 / (step + 1))
            with torch.no_grad():
                for a, b in zip(mean.parameters(), net.parameters()): a.lerp_(b, 1 - keep)
            if step % 20 == 0: loss_mean = loss.item() if loss_mean is None else .9 * loss_mean + .1 * loss.item()
            if step % 400 == 0: print(f'step {step} loss {loss_mean:.3f} seconds {time.time() - begun:.0f}', flush=True)
    torch.save({k: v.half() for k, v in mean.state_dict().items()}, out)
    print('steps', step, 'loss', loss_mean, 'seconds', round(time.time() - begun), flush=True)


if __name__ == '__main__': main(float(sys.argv[1]), [float(z) for z in sys.argv[2].split(',')], *sys.argv[3:6], int(sys.argv[6]))
