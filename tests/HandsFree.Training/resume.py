"""resume.py SMALL.onnx OUT.pt: takes the weights out of the file that weights.py wrote, to train on from them."""
import sys
import numpy as np
import onnx
import torch
from onnx import numpy_helper


def main(path, out):
    given = {t.name[:-5]: numpy_helper.to_array(t).astype(np.float32) for t in onnx.load(path).graph.initializer if t.name.endswith('.half')}
    state = {}
    for name, value in given.items():
        part, kind = name.rsplit('.', 1)
        if part.startswith('gru'):
            for way, ending in enumerate(('', '_reverse')):
                pieces = np.split(value[way], 2 if kind == 'b' else 1)
                for piece, what in zip(pieces, ('bias_ih', 'bias_hh') if kind == 'b' else ({'w': 'weight_ih', 'r': 'weight_hh'}[kind],)):
                    update, reset, new = np.split(piece, 3)  # the standard's order; PyTorch's is reset, update, new
                    state[f'gru.{what}_l{part[3:]}{ending}'] = np.concatenate([reset, update, new])
        else: state[f"{part}.{'weight' if kind == 'w' else 'bias'}"] = value.T if part in ('into', 'out') and kind == 'w' else value
    torch.save({k: torch.from_numpy(np.ascontiguousarray(v)) for k, v in state.items()}, out)


if __name__ == '__main__': main(*sys.argv[1:3])
