"""weights.py WEIGHTS.pt WORDS.txt OUT.onnx: writes the network for ONNX Runtime, its weights as 16-bit floats (the runtime makes them
32-bit ones once, on loading)."""
import sys
import numpy as np
import onnx
import torch
from onnx import TensorProto, helper, numpy_helper
import network
import vocabulary


def main(weights, words_file, out):
    state = {k: v.float().numpy() for k, v in torch.load(weights, map_location='cpu').items()}
    nodes, tensors = [], []

    def half(name, value):
        tensors.append(numpy_helper.from_array(np.ascontiguousarray(value).astype(np.float16), name + '.half'))
        nodes.append(helper.make_node('Cast', [name + '.half'], [name], to=TensorProto.FLOAT))
        return name

    def whole(name, value, kind):
        tensors.append(numpy_helper.from_array(np.array(value, kind), name))
        return name

    def node(kind, inputs, output, **attributes):
        nodes.append(helper.make_node(kind, inputs, [output], **attributes))
        return output

    whole('floor', -.4, np.float32)
    whole('channel', [1], np.int64)
    whole('band', [3], np.int64)
    x = node('Unsqueeze', ['mel', 'channel'], 'image')
    for i, (_, _, t, f) in enumerate(network.LAYERS):
        x = node('Conv', [x, half(f'trunk.{i}.w', state[f'trunk.{i}.weight']), half(f'trunk.{i}.b', state[f'trunk.{i}.bias'])], f'conv{i}', kernel_shape=[t, f], pads=[0, f // 2, 0, f // 2])
        x = node('LeakyRelu', [x], f'leaky{i}', alpha=.2)
        x = node('Max', [x, 'floor'], f'floored{i}')
        if i in network.POOLS: x = node('MaxPool', [x], f'pool{i}', kernel_shape=network.POOLS[i][:2], strides=network.POOLS[i][2:])
    x = node('Conv', [x, half('last.w', state['last.weight'])], 'last', kernel_shape=[3, 1], dilations=[2, 1])
    x = node('Squeeze', [x, 'band'], 'squeezed')
    x = node('Transpose', [x], 'rows', perm=[0, 2, 1])
    x = node('LayerNormalization', [x, half('even.w', state['even.weight']), half('even.b', state['even.bias'])], 'even', axis=-1, epsilon=1e-5)
    x = node('MatMul', [x, half('into.w', state['into.weight'].T)], 'into0')
    x = node('Add', [x, half('into.b', state['into.bias'])], 'into')
    x = node('LayerNormalization', [x, half('even2.w', state['even2.weight']), half('even2.b', state['even2.bias'])], 'even2', axis=-1, epsilon=1e-5)
    x = node('Relu', [x], 'shown')
    x = node('Transpose', [x], 'steps', perm=[1, 0, 2])
    hidden = state['gru.weight_hh_l0'].shape[1]
    whole('flat', [0, 0, -1], np.int64)
    for layer in range(2):
        # PyTorch's gates stand in the order reset, update, new; the standard's are update, reset, hidden
        def gates(name): return np.stack([np.concatenate([g[1], g[0], g[2]]) for g in (np.split(state[f'gru.{name}_l{layer}{way}'], 3) for way in ('', '_reverse'))])
        w, r = half(f'gru{layer}.w', gates('weight_ih')), half(f'gru{layer}.r', gates('weight_hh'))
        b = half(f'gru{layer}.b', np.concatenate([gates('bias_ih'), gates('bias_hh')], 1))
        nodes.append(helper.make_node('GRU', [x, w, r, b], [f'gru{layer}.y'], direction='bidirectional', hidden_size=hidden, linear_before_reset=1))
        x = node('Transpose', [f'gru{layer}.y'], f'gru{layer}.t', perm=[0, 2, 1, 3])
        x = node('Reshape', [x, 'flat'], f'gru{layer}')
    x = node('Transpose', [x], 'again', perm=[1, 0, 2])
    x = node('MatMul', [x, half('out.w', state['out.weight'].T)], 'out0')
    node('Add', [x, half('out.b', state['out.bias'])], 'logits')
    wide = len(vocabulary.read(words_file)) + 2
    graph = helper.make_graph(nodes, 'small', [helper.make_tensor_value_info('mel', TensorProto.FLOAT, [1, 'frames', network.MELS])],
                              [helper.make_tensor_value_info('logits', TensorProto.FLOAT, [1, 'rows', wide])], tensors)
    model = helper.make_model(graph, opset_imports=[helper.make_opsetid('', 17)])
    model.ir_version = 8
    onnx.checker.check_model(model)
    onnx.save(model, out)


if __name__ == '__main__': main(*sys.argv[1:4])
