"""reference.py MODEL.onnx CLIP.wav OUT.tsv: what PyTorch with the encoder of the package transformers makes of a clip with the weights as floats, for
the tests of the program: the logits of the blank and of the two likeliest places of each row."""
import sys
import wave
import numpy as np
import torch
import words_encoder


def main(model, clip, out):
    with wave.open(clip) as w:
        assert w.getframerate() == 16000 and w.getnchannels() == 1
        x = np.frombuffer(w.readframes(1 << 30), np.int16).astype(np.float32) / 32768
    x = np.concatenate([np.zeros(6400, np.float32), x, np.zeros(6400, np.float32)])[None]
    encoder, weight, bias = words_encoder.load(model)
    with torch.no_grad(): floats = (encoder.eval()(torch.from_numpy(x)).last_hidden_state @ weight.T + bias)[0].numpy()
    with open(out, 'w') as f:
        f.write('row\tplace\tlogit\n')
        for row, logits in enumerate(floats):
            for place in sorted({0, *np.argsort(-logits)[:2].tolist()}): f.write(f'{row}\t{place}\t{logits[place]:.4f}\n')


if __name__ == '__main__': main(*sys.argv[1:4])
