"""Makes new sound out of clips, a batch at a time: speed, beginnings that the microphone missed, room, band limits, telephone, a trembling
voice, noise, other voices, clicks and coughs, level, clipping; and noise alone, in which there is nothing to hear."""
import math
import random
import torch


class Sound:
    def __init__(self, samples, lengths, device, seed):
        self.samples = torch.from_numpy(samples).to(device)
        self.lengths = torch.from_numpy(lengths).long().to(device)
        self.starts = torch.cumsum(self.lengths, 0) - self.lengths
        self.device = device
        self.r = torch.Generator(device=device)
        self.r.manual_seed(seed)
        self.chosen = random.Random(seed)

    def uniform(self, n, low, high): return torch.rand(n, generator=self.r, device=self.device) * (high - low) + low

    def chance(self, n, p): return torch.rand(n, generator=self.r, device=self.device) < p

    def normal(self, *shape): return torch.randn(*shape, generator=self.r, device=self.device)

    def cut(self, clips, speed, lead, tail):
        """The clips at another speed with quiet before and after, [clips, samples]."""
        n = len(clips)
        length = self.lengths[clips]
        whole = math.ceil(((lead + length / speed + tail).max().item() + 1) / 8000) * 8000  # few lengths, and quick to transform
        self.whole = (lead + length / speed + tail).ceil().long().cpu()  # samples of the clip itself, without what fills the batch
        t = (torch.arange(whole, device=self.device)[None] - lead[:, None]) * speed[:, None]
        at = t.floor().clamp(min=0).long()
        inside = (t >= 0) & (at < (length - 1)[:, None])
        at = torch.minimum(at, (length - 2)[:, None]) + self.starts[clips][:, None]
        a, b = self.samples[at].float(), self.samples[at + 1].float()
        x = (a + (b - a) * (t - t.floor())) / 32768
        return x * inside, inside

    def altered(self, clips, alone=.06):
        """As they might be heard, as samples; a share of them are noise alone, and self.silent says which."""
        n = len(clips)
        speed = torch.where(self.chance(n, .75), self.uniform(n, .82, 1.2), torch.ones(n, device=self.device))
        speed = torch.where(self.chance(n, .35), self.uniform(n, .76, 1.3), speed)
        tight = self.chance(n, .3)
        lead = torch.where(tight, self.uniform(n, 0, 600), self.uniform(n, 800, 11000))
        tail = torch.where(tight, self.uniform(n, 0, 600), self.uniform(n, 800, 11000))
        lead = torch.where(self.chance(n, .07), -self.uniform(n, 0, 3000), lead)  # the microphone missed up to 160 ms beyond the clip's own quiet
        x, inside = self.cut(clips, speed, lead, tail)
        x = self.trembling(x)
        x = self.heard_through(x)
        x = x / self.rms(x, inside)
        silent = self.chance(n, alone)
        self.silent = silent.tolist()
        x = x * ~silent[:, None] + self.noise(x, silent) + self.events(n, x.shape[1], silent)
        level = torch.where(silent, self.uniform(n, -60, -10), self.uniform(n, -46, -8))
        x = x / self.rms(x, inside) * 10 ** (level / 20)[:, None]
        loud = torch.where(self.chance(n, .12), self.uniform(n, 2, 14), torch.ones(n, device=self.device))[:, None]
        x = torch.clamp(x * loud, -1, 1) / loud
        floor = torch.where(self.chance(n, .85), 10 ** (self.uniform(n, -95, -62) / 20), torch.zeros(n, device=self.device))
        x = x + self.normal(*x.shape) * floor[:, None]
        return self.telephone(torch.clamp(x, -1, 1))

    def trembling(self, x):
        """An old or tired voice: its level shakes 4 to 8 times a second."""
        n, whole = x.shape
        t = torch.arange(whole, device=self.device)[None] / 16000
        depth = torch.where(self.chance(n, .08), self.uniform(n, .15, .5), torch.zeros(n, device=self.device))[:, None]
        return x * (1 + depth * torch.sin(2 * math.pi * self.uniform(n, 4, 8)[:, None] * t))

    def telephone(self, x, share=.15):
        """8 kHz and 8 bits of mu-law."""
        chosen = self.chance(len(x), share).nonzero()[:, 0]
        if len(chosen) == 0: return x
        z = x[chosen]
        hz = torch.fft.rfftfreq(z.shape[1], 1 / 16000).to(self.device)
        z = torch.fft.irfft(torch.fft.rfft(z) * (hz < self.uniform(len(chosen), 3300, 3990)[:, None]), z.shape[1])
        peak = z.abs().amax(1, keepdim=True) + 1e-6
        y = torch.round(torch.sign(z) * torch.log1p(255 * (z / peak).abs()) / math.log(256) * 127) / 127
        x[chosen] = torch.sign(y) * (256 ** y.abs() - 1) / 255 * peak
        return x

    @staticmethod
    def rms(x, inside): return ((x * x * inside).sum(1, keepdim=True) / (inside.sum(1, keepdim=True) + 1)).sqrt() + 1e-6

    def heard_through(self, x):
        """A room and a microphone."""
        n, whole = x.shape
        size = 1 << math.ceil(math.log2(whole + 8000))
        hz = torch.fft.rfftfreq(size, 1 / 16000).to(self.device)[None]
        low = torch.where(self.chance(n, .35), self.uniform(n, 2200, 7000), torch.full((n,), 20000., device=self.device))[:, None]
        high = torch.where(self.chance(n, .3), self.uniform(n, 60, 350), torch.full((n,), 1., device=self.device))[:, None]
        tilt = self.uniform(n, -5, 5)[:, None]  # dB an octave above and below 1 kHz, halved by the square root below
        gain = 1 / (1 + (hz / low) ** 8) / (1 + (high / hz.clamp(min=1)) ** 4) * (hz.clamp(min=50) / 1000) ** (tilt / 12)
        seconds = self.uniform(n, .05, .5)[:, None]
        t = torch.arange(8000, device=self.device)[None] / 16000
        tail = self.normal(n, 8000) * torch.exp(-6.9 * t / seconds) * (t > .002)
        tail = tail / (tail.norm(dim=1, keepdim=True) + 1e-6) * torch.where(self.chance(n, .5), self.uniform(n, .15, 1.1), torch.zeros(n, device=self.device))[:, None]
        tail[:, 0] = 1
        spectrum = torch.fft.rfft(x, size) * gain * torch.fft.rfft(tail, size)
        return torch.fft.irfft(spectrum, size)[:, :whole]

    def coloured(self, n, whole, colour):
        """Noise of power 1 whose spectrum falls with f to the power of colour: 0 white, 1 pink, 2 brown."""
        spectrum = torch.fft.rfft(self.normal(n, whole))
        hz = torch.arange(spectrum.shape[1], device=self.device).clamp(min=8)[None].float()
        z = torch.fft.irfft(spectrum * hz ** (-colour[:, None] / 2), whole)
        return z / (z.std(1, keepdim=True) + 1e-6)

    def noise(self, x, silent):
        """Coloured noise, babble of the batch's other clips or one other voice; where there is nothing to hear, no single voice."""
        n, whole = x.shape
        kind = torch.rand(n, generator=self.r, device=self.device)
        kind = torch.where(silent & (kind >= .84), kind - .4, kind)[:, None]
        coloured = self.coloured(n, whole, self.uniform(n, 0, 2))
        babble = torch.zeros_like(x)
        one = torch.zeros_like(x)
        for voice in range(6):
            other = torch.roll(x[torch.randperm(n, generator=self.r, device=self.device)], self.chosen.randrange(whole), 1)
            one = other if voice == 0 else one
            babble = babble + other * torch.where(self.chance(n, .75), self.uniform(n, .4, 1.2), torch.zeros(n, device=self.device))[:, None]
        many = babble + torch.roll(babble[torch.randperm(n, generator=self.r, device=self.device)], self.chosen.randrange(whole), 1)
        babble = torch.where(silent[:, None], many, babble)
        babble = babble / (babble.std(1, keepdim=True) + 1e-3)
        snr = torch.where(self.chance(n, .6), self.uniform(n, 4, 18), self.uniform(n, 12, 38))[:, None]
        level = 10 ** (-snr / 20)
        one = one * 10 ** (-(snr + 3) / 20)
        return torch.where(kind < .10, torch.zeros_like(x), torch.where(kind < .38, coloured * level, torch.where(kind < .84, babble * level, one + .3 * coloured * level)))

    def events(self, n, whole, silent):
        """Clicks, knocks, coughs, breaths and beeps."""
        t = torch.arange(whole, device=self.device)[None] / 16000
        hiss = self.coloured(n, whole, self.uniform(n, 0, 1.5))
        found = torch.zeros(n, whole, device=self.device)
        for _ in range(3):
            kind = torch.randint(0, 5, (n,), generator=self.r, device=self.device)
            attack = torch.tensor([.0005, .001, .01, .2, .003], device=self.device)[kind][:, None]
            decay = torch.tensor([.004, .03, .12, .25, .15], device=self.device)[kind][:, None] * self.uniform(n, .5, 1.8)[:, None]
            since = (t - self.uniform(n, 0, whole / 16000)[:, None]).clamp(min=0)
            shape = (1 - torch.exp(-since / attack)) * torch.exp(-since / decay)
            hz = torch.where(kind == 1, self.uniform(n, 80, 400), self.uniform(n, 400, 3000))[:, None]
            tone = ((kind == 1) | (kind == 4))[:, None]
            level = 10 ** (self.uniform(n, -14, 10) / 20)[:, None]
            found = found + shape * torch.where(tone, 1.4 * torch.sin(2 * math.pi * hz * t), 2 * hiss) * level
        return found * self.chance(n, .2).logical_or(silent & self.chance(n, .7))[:, None]
