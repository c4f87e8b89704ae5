"""The network: log-mel values -> convolutions in time and frequency -> two bidirectional GRUs -> words and blank, one row for 40 ms."""
import numpy as np
import torch
from torch import nn

RATE, WINDOW, HOP, FFT, MELS = 16000, 400, 160, 512, 32
LOWEST, HIGHEST = 60.0, 3800.0
# frames of mel values before and after an utterance that the convolutions take away: 76 in all
BEFORE, AFTER = 38, 37


def slaney(hz): return np.where(hz < 1000, hz * 3 / 200, 15 + np.log(np.maximum(hz, 1) / 1000) * 27 / np.log(6.4))


def hertz(mel): return np.where(mel < 15, mel * 200 / 3, 1000 * np.exp((mel - 15) * np.log(6.4) / 27))


def mel_filters(warp=1.0):
    """[257, 32] triangles of equal area on Slaney's scale from 60 to 3800 Hz; warp stretches the frequencies (a longer or shorter throat)."""
    edges = hertz(np.linspace(slaney(np.array(LOWEST)), slaney(np.array(HIGHEST)), MELS + 2)) * warp
    hz = np.arange(FFT // 2 + 1)[:, None] * RATE / FFT
    up, down = (hz - edges[:-2]) / (edges[1:-1] - edges[:-2]), (edges[2:] - hz) / (edges[2:] - edges[1:-1])
    return (np.maximum(0, np.minimum(up, down)) * 2 / (edges[2:] - edges[:-2])).astype(np.float32)


def log_mel(samples, filters):
    """Samples in [-1, 1], [clips, samples]; filters [257, 32] or one for each clip. Gives [clips, frames, 32]. The 1 is the power of
    half a step of 16 bits, near enough: digital silence is the quietest room."""
    window = torch.hann_window(WINDOW, device=samples.device)
    x = torch.stft(samples * 32767, FFT, HOP, WINDOW, window, center=False, return_complex=True)
    power = (x.real ** 2 + x.imag ** 2).transpose(1, 2)
    return torch.log10(power @ filters + 1) + 2


# convolutions of the trunk: (channels in, out, kernel in time, kernel in frequency); pools follow after the named ones
LAYERS = [(1, 24, 3, 3), (24, 24, 1, 3), (24, 24, 3, 1)] + [(24, 48, 1, 3), (48, 48, 3, 1), (48, 48, 1, 3), (48, 48, 3, 1)] \
    + [(48, 72, 1, 3), (72, 72, 3, 1), (72, 72, 1, 3), (72, 72, 3, 1)] + [(72, 96, 1, 3), (96, 96, 3, 1), (96, 96, 1, 3), (96, 96, 3, 1)] \
    + [(96, 96, 1, 3), (96, 96, 3, 1), (96, 96, 1, 3), (96, 96, 3, 1)]
# after layer: (kernel in time, in frequency, stride in time, in frequency); the last keeps its place in time so that a row is 40 ms
POOLS = {2: (2, 2, 2, 2), 6: (1, 2, 1, 2), 10: (2, 2, 2, 2), 14: (1, 2, 1, 2), 18: (2, 2, 1, 2)}


class Network(nn.Module):
    def __init__(self, words, hidden=256, dropout=.25):
        super().__init__()
        self.trunk = nn.ModuleList(nn.Conv2d(i, o, (t, f), padding=(0, f // 2)) for i, o, t, f in LAYERS)
        self.last = nn.Conv2d(96, 96, (3, 1), dilation=(2, 1), bias=False)
        self.even = nn.LayerNorm(96)
        self.into = nn.Linear(96, hidden)
        self.even2 = nn.LayerNorm(hidden)
        self.gru = nn.GRU(hidden, hidden, 2, batch_first=True, bidirectional=True, dropout=dropout)
        self.drop = nn.Dropout(dropout)
        self.out = nn.Linear(2 * hidden, words + 2)  # blank, any other word, words

    def forward(self, mel, lengths=None):
        """[clips, frames, 32] -> logits [clips, (frames - 72) / 4, words + 2]; rows after a clip's own length are of no meaning"""
        x = mel[:, None]
        for i, layer in enumerate(self.trunk):
            x = torch.clamp(nn.functional.leaky_relu(layer(x), .2), min=-.4)
            if i in POOLS: x = nn.functional.max_pool2d(x, POOLS[i][:2], POOLS[i][2:])
        x = self.last(x)[:, :, :, 0].transpose(1, 2)
        x = torch.relu(self.even2(self.into(self.drop(self.even(x)))))
        if lengths is None: x, _ = self.gru(x)
        else:
            packed = nn.utils.rnn.pack_padded_sequence(x, lengths, batch_first=True, enforce_sorted=False)
            x, _ = nn.utils.rnn.pad_packed_sequence(self.gru(packed)[0], batch_first=True, total_length=x.shape[1])
        return self.out(self.drop(x))

    def load_embedding(self, path):
        """Begins with the weights of a public speech embedding (Lin et al. 2020, arXiv 2002.01322, Apache 2.0)."""
        given = np.load(path)
        for i, layer in enumerate(self.trunk):
            layer.weight.data = torch.from_numpy(given[f'w{i}'])
            layer.bias.data = torch.from_numpy(given[f'b{i}'])
        self.last.weight.data = torch.from_numpy(given['w19'])


def rows(frames):
    """Rows of output for frames of mel values."""
    t = frames - 2 - 2
    t = t // 2 - 2 - 2 - 2 - 2
    t = t // 2 - 2 - 2 - 2 - 2 - 1
    return t - 4
