"""embedding.py embedding_model.onnx OUT.npz: takes the convolutions out of the public speech embedding."""
import re
import sys
import numpy as np
import onnx
from onnx import numpy_helper

found = {}
for tensor in onnx.load(sys.argv[1]).graph.initializer:
    match = re.match(r'model/conv2d(?:_(\d+))?/Conv2D(_weights_fused_bn|_bias_fused_bn|/ReadVariableOp:0)$', tensor.name)
    if match: found[('b' if 'bias' in match[2] else 'w') + (match[1] or '0')] = numpy_helper.to_array(tensor)
assert len(found) == 39, sorted(found)
np.savez(sys.argv[2], **found)
