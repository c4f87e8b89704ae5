"""vectors.py WEIGHTS.pt WORDS.txt OUT.tsv: what this Python makes of a sound that both sides can compute, for the tests of the other side:
log-mel values and logits at some places."""
import sys
import numpy as np
import torch
import network
import vocabulary


def sound(n=16000):
    """Two gliding tones with a beat; no chance in it."""
    t = np.arange(n) / 16000
    return (.3 * np.sin(2 * np.pi * (200 + 600 * t) * t) * np.sin(2 * np.pi * 3 * t) + .1 * np.sin(2 * np.pi * (2500 - 800 * t) * t)).astype(np.float32)


def main(weights, words_file, out):
    net = network.Network(len(vocabulary.read(words_file))).eval()
    net.load_state_dict({k: v.half().float() for k, v in torch.load(weights, map_location='cpu').items()})
    mel = network.log_mel(torch.from_numpy(sound())[None], torch.from_numpy(network.mel_filters()))
    with torch.no_grad(): logits = net(mel)[0]
    with open(out, 'w') as f:
        f.write('what\tframe\tplace\tvalue\n')
        for frame in (0, 1, 20, 50, mel.shape[1] - 1):
            for band in range(0, 32, 3): f.write(f'mel\t{frame}\t{band}\t{mel[0, frame, band].item():.6f}\n')
        for row in (0, 1, logits.shape[0] - 1):
            for place in (0, 1, 2, 40, 100, logits.shape[1] - 1): f.write(f'logits\t{row}\t{place}\t{logits[row, place].item():.6f}\n')


if __name__ == '__main__': main(*sys.argv[1:4])
