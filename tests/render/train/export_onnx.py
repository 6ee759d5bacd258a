"""Weights of train.py to an ONNX file that OpenCV 4.6 reads. Needs Debian's python3-onnx.
    /usr/bin/python3 export_onnx.py weights.npz edge_net.onnx"""
import sys

import numpy as np
from onnx import TensorProto, helper, numpy_helper

w = np.load(sys.argv[1])
nodes, inits = [], []


def conv(x, name, out, stride=1, pad=None, dilation=1, relu=True, transposed=False):
    weight = w[name + ".weight"]
    size = weight.shape[2]
    pad = (size - 1) // 2 * dilation if pad is None else pad
    inits.extend([numpy_helper.from_array(weight, name + "_w"), numpy_helper.from_array(w[name + ".bias"], name + "_b")])
    nodes.append(helper.make_node("ConvTranspose" if transposed else "Conv", [x, name + "_w", name + "_b"], [out if not relu else out + "_c"],
                                  kernel_shape=[size, size], strides=[stride, stride], pads=[pad] * 4, dilations=[dilation, dilation]))
    if relu:
        nodes.append(helper.make_node("Relu", [out + "_c"], [out]))
    return out


def add(a, b, out):
    nodes.append(helper.make_node("Add", [a, b], [out]))
    return out


s = conv(conv("band", "stem", "s0", 2, 1), "fine", "s1")
e = add(conv(s, "down1", "e0", 2, 1, relu=False), conv(conv("context", "ctx1", "q0", pad=0), "ctx2", "q1", pad=0, relu=False), "e1")
nodes.append(helper.make_node("Relu", [e], ["e2"]))
e = add("e2", conv("e2", "mid1", "m1"), "e3")
e = add(e, conv(e, "mid2", "m2"), "e4")
z = conv(e, "down2", "z0", 2, 1)
for i, d in ((1, 1), (2, 2), (3, 1)):
    z = add(z, conv(z, "deep%d" % i, "d%d" % i, dilation=d), "z%d" % i)
u = conv(add(conv(z, "up2", "u0", 2, 0, transposed=True), e, "u1"), "join2", "u2")
v = conv(add(conv(u, "up1", "v0", 2, 0, transposed=True), s, "v1"), "join1", "v2")
conv(v, "last", "maps", pad=0, relu=False)
info = lambda name, c: helper.make_tensor_value_info(name, TensorProto.FLOAT, [1, c, None, None])
graph = helper.make_graph(nodes, "edge_net", [info("band", 3), info("context", w["ctx1.weight"].shape[1])], [info("maps", w["last.weight"].shape[0])], inits)
model = helper.make_model(graph, opset_imports=[helper.make_opsetid("", 11)], producer_name="kempt")
model.ir_version = 6
open(sys.argv[2], "wb").write(model.SerializeToString())
