"""Trains the edge network on strips from make_strips and writes its weights.

    g++ -std=c++20 -O3 -march=native -I tests/render -I analysis -o make_strips tests/render/train/make_strips.cpp \\
        analysis/edges/reference_colours.cpp tests/render/{scene,strands,shade,raster,phone}.cpp
    ./make_strips SEED COUNT strips/N.bin          (several seeds, in parallel)
    python3 train.py strips weights.npz SECONDS [START.npz]
    python3 export_onnx.py weights.npz ../../../analysis/edges/model/edge_net.onnx

Needs PyTorch; an accelerator makes it minutes. Input of the network: log light of the straightened band relative to bare
skin (3 planes, full size) and the context planes (reference_colours.h, quarter size). Output at half size: cover of the
pixel by hair, and crossings with test lines in six directions (per pixel length). Seeds 9000 and up are kept for judging.
"""
import glob
import sys
import time

import numpy as np
import torch
import torch.nn as nn
import torch.nn.functional as F

ROWS, COLS, CH, CTX = 256, 128, 7, 29
RECORD = (CTX + 3) * 4 + 2 * (3 * ROWS * COLS + CH * ROWS * COLS // 4)


class Net(nn.Module):
    def __init__(self, c0=14, c1=28, c2=40):
        super().__init__()
        self.stem = nn.Conv2d(3, c0, 4, 2, 1)
        self.fine = nn.Conv2d(c0, c0, 3, 1, 1)
        self.down1 = nn.Conv2d(c0, c1, 3, 2, 1)
        self.ctx1 = nn.Conv2d(CTX, 32, 1)
        self.ctx2 = nn.Conv2d(32, c1, 1)
        self.mid1 = nn.Conv2d(c1, c1, 3, 1, 1)
        self.mid2 = nn.Conv2d(c1, c1, 3, 1, 1)
        self.down2 = nn.Conv2d(c1, c2, 3, 2, 1)
        self.deep1 = nn.Conv2d(c2, c2, 3, 1, 1)
        self.deep2 = nn.Conv2d(c2, c2, 3, 1, 2, 2)
        self.deep3 = nn.Conv2d(c2, c2, 3, 1, 1)
        self.up2 = nn.ConvTranspose2d(c2, c1, 2, 2)
        self.join2 = nn.Conv2d(c1, c1, 3, 1, 1)
        self.up1 = nn.ConvTranspose2d(c1, c0, 2, 2)
        self.join1 = nn.Conv2d(c0, c0, 3, 1, 1)
        self.last = nn.Conv2d(c0, CH, 1)

    def forward(self, x, ctx):
        r = F.relu
        s = r(self.fine(r(self.stem(x))))
        e = r(self.down1(s) + self.ctx2(r(self.ctx1(ctx))))
        e = e + r(self.mid1(e))
        e = e + r(self.mid2(e))
        z = r(self.down2(e))
        z = z + r(self.deep1(z))
        z = z + r(self.deep2(z))
        z = z + r(self.deep3(z))
        u = r(self.join2(r(self.up2(z)) + e))
        v = r(self.join1(r(self.up1(u)) + s))
        return self.last(v)


def load(folder):
    heads, xs, ys = [], [], []
    for path in sorted(glob.glob(folder + "/*.bin")):
        raw = np.fromfile(path, np.uint8)
        n = len(raw) // RECORD
        raw = raw[: n * RECORD].reshape(n, RECORD)
        a = (CTX + 3) * 4
        b = a + 2 * 3 * ROWS * COLS
        heads.append(raw[:, :a].copy().view(np.float32))
        xs.append(torch.from_numpy(raw[:, a:b].copy().view(np.float16).reshape(n, 3, ROWS, COLS)))
        ys.append(torch.from_numpy(raw[:, b:].copy().view(np.float16).reshape(n, CH, ROWS // 2, COLS // 2)))
    return torch.from_numpy(np.concatenate(heads)), torch.cat(xs), torch.cat(ys)


def smooth(y):
    k = torch.tensor([[1.0, 2, 1], [2, 4, 2], [1, 2, 1]], device=y.device) / 16
    k = k.expand(y.shape[1], 1, 3, 3)
    return F.conv2d(F.pad(y, (1, 1, 1, 1), mode="replicate"), k, groups=y.shape[1])


def main():
    folder, out, seconds = sys.argv[1], sys.argv[2], float(sys.argv[3])
    dev = "cuda"
    head, x, y = load(folder)
    n = len(head)
    print("strips", n, "cover", y[:, 0].float().mean().item(), flush=True)
    x, y, head = x.to(dev), y.to(dev), head.to(dev)
    held = max(256, n // 20)
    torch.manual_seed(1)
    order = torch.randperm(n, device=dev)
    test, train = order[:held], order[held:]
    net = Net().to(dev)
    if len(sys.argv) > 4:
        w = np.load(sys.argv[4])
        net.load_state_dict({k: torch.from_numpy(w[k]) for k in w.files})
    net = net.to(memory_format=torch.channels_last)
    opt = torch.optim.AdamW(net.parameters(), lr=3e-3, weight_decay=1e-4)
    ema = {k: v.clone() for k, v in net.state_dict().items()}
    batch, start, step = 96, time.time(), 0
    # Faint pairs (light hair on light skin, dark on dark) come up more often, so that no class is left behind.
    skin, hair = head[train, CTX].long(), head[train, CTX + 1].long()
    table = torch.ones(6, 7, device=dev)
    table[0:3, 4:6] = 2.0
    table[4:6, 1:4] = 1.5
    table[5, 0:7] = 1.6
    table[:, 6] *= 1.4
    weight = table[skin, hair]
    context = lambda h: h[:, :CTX, None, None].expand(-1, -1, ROWS // 4, COLS // 4)
    compiled = torch.compile(net)
    while True:
        done = (time.time() - start) / seconds
        if done >= 1:
            break
        lr = 3e-3 * min(1, step / 300) * (0.5 + 0.5 * np.cos(np.pi * done)) + 1e-5
        for g in opt.param_groups:
            g["lr"] = lr
        pick = train[torch.multinomial(weight, batch, replacement=True)]
        xb, yb, hb = x[pick].float(), y[pick].float(), head[pick]
        if step % 2:  # mirrored along the line: the six directions change places
            xb, yb = xb.flip(3), yb.flip(3)
            yb = torch.cat([yb[:, :2], yb[:, [6, 5, 4, 3, 2]]], 1)
        yb = torch.cat([yb[:, :1], smooth(yb[:, 1:])], 1)
        ctx = hb[:, :CTX].clone()
        ctx[:, :24] += 0.03 * torch.randn_like(ctx[:, :24])
        shift = 0.04 * torch.randn(batch, 3, 1, 1, device=dev)
        with torch.autocast("cuda", dtype=torch.bfloat16):
            p = compiled((xb + shift).contiguous(memory_format=torch.channels_last), ctx[:, :, None, None].expand(-1, -1, ROWS // 4, COLS // 4))
        p = p.float()
        a, t = p[:, :1], yb[:, :1]
        d, td = p[:, 1:], yb[:, 1:]
        block = lambda v: F.avg_pool2d(v, 16)
        whole = lambda v: v.mean((2, 3))
        loss = 4 * F.mse_loss(a, t) + 0.3 * F.l1_loss(a, t) + 2 * F.l1_loss(block(a), block(t)) + 3 * F.l1_loss(whole(a), whole(t))
        loss = loss + 8 * F.mse_loss(d, td) + 4 * F.l1_loss(block(d), block(td)) + 6 * F.l1_loss(whole(d), whole(td))
        opt.zero_grad(set_to_none=True)
        loss.backward()
        torch.nn.utils.clip_grad_norm_(net.parameters(), 1.0)
        opt.step()
        step += 1
        k = min(0.999, step / (step + 100))
        for name, v in net.state_dict().items():
            ema[name].mul_(k).add_(v, alpha=1 - k)
        if step % 2000 == 0:
            print(f"step {step} {time.time() - start:.0f}s loss {loss.item():.4f} lr {lr:.5f}", flush=True)
    net.load_state_dict(ema)
    np.savez(out, **{k: v.float().cpu().numpy() for k, v in ema.items()})
    net.eval()
    errors, cross, info = [], [], []
    with torch.no_grad():
        for i in range(0, held, 64):
            q = test[i : i + 64]
            p = net(x[q].float(), context(head[q]))
            p[:, 0].clamp_(0, 1)
            t = y[q].float()
            errors.append((p[:, 0].mean((1, 2)) - t[:, 0].mean((1, 2))).cpu().numpy() * 100)
            cross.append(torch.stack([p[:, 1].mean((1, 2)), t[:, 1].mean((1, 2)), t[:, 0].mean((1, 2))], 1).cpu().numpy())
            info.append(head[q, CTX:].cpu().numpy())
    e, c, info = np.concatenate(errors), np.concatenate(cross), np.concatenate(info)
    print("cover error: mean abs %.2f bias %.2f p95 %.2f points" % (np.abs(e).mean(), e.mean(), np.percentile(np.abs(e), 95)))
    for name, col, values in (("skin", 0, range(6)), ("hair", 1, range(7))):
        print(name, " ".join("%d: %.2f/%.2f" % (k, np.abs(e[info[:, col] == k]).mean(), e[info[:, col] == k].mean()) for k in values))
    for lo, hi in ((11, 16), (16, 20), (20, 26), (26, 34)):
        m = (info[:, 2] >= lo) & (info[:, 2] < hi)
        s = m & (c[:, 2] < 0.4) & (c[:, 1] > 0.002)
        print("px/mm %d-%d cover %.2f crossings rel %.1f %% bias %.1f %%" % (lo, hi, np.abs(e[m]).mean(), 100 * (np.abs(c[s, 0] - c[s, 1]) / c[s, 1]).mean(),
              100 * (c[s, 0].sum() / c[s, 1].sum() - 1)))
    grid = [["%.1f" % np.abs(e[(info[:, 0] == a) & (info[:, 1] == b)]).mean() for b in range(7)] for a in range(6)]
    print("skin x hair", *grid, sep="\n")


if __name__ == "__main__":
    main()
