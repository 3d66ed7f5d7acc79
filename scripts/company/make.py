"""Makes scripts/build/data/company.bin and company-words.txt: what goes with which neighbours, in small vectors.

    python3 scripts/company/make.py EN-US.LM.BIN WORDS.TXT

Source: the US English language model of CMU Sphinx (Carnegie Mellon University and Alpha Cephei; BSD 2-clause), the
file model/en-us/en-us.lm.bin of the Debian package pocketsphinx-en-us 0.8+5prealpha+1-15. WORDS.TXT holds the words that
children know, one a line (npx tsx scripts/company/list-words.ts). Needs numpy and scipy; run by hand, never in a build.

From the model's bigrams and trigrams: how much likelier than by chance is a word right after, right before, two after and
two before another (positive pointwise mutual information), cut down by singular values to DIMS numbers for each word and
for each neighbour on each of the four sides. A dot product of word and neighbour gives that measure back, near enough.
"""

import struct
import sys

import numpy as np
import scipy.sparse as sp
from scipy.sparse.linalg import svds

WORDS, NEIGHBOURS, DIMS = 4500, 1000, 40


def read_model(path):
    """The trie file of sphinxbase: unigrams plain, bigrams and trigrams packed in bits, by their last word first."""
    data = open(path, 'rb').read()
    assert data[:19] == b'Trie Language Model' and data[19] == 3
    counts = struct.unpack('<3I', data[20:32])
    at = 36
    tables = np.frombuffer(data, '<f4', 3 << 16, at).reshape(3, 1 << 16)
    at += 3 * 4 << 16
    one = np.frombuffer(data, [('p', '<f4'), ('b', '<f4'), ('n', '<u4')], counts[0] + 1, at)
    at += 12 * (counts[0] + 1)
    width = lambda n: int(n).bit_length()
    word, link = width(counts[0]), width(counts[2])
    middle, last = word + 32 + link, word + 16
    size2, size3 = ((1 + counts[1]) * middle + 7) // 8 + 8, ((1 + counts[2]) * last + 7) // 8 + 8
    two = np.frombuffer(data, 'u1', size2, at)
    three = np.frombuffer(data, 'u1', size3, at + size2)
    at += size2 + size3
    (length,) = struct.unpack('<I', data[at : at + 4])
    words = [w.decode() for w in data[at + 4 : at + 4 + length].split(b'\0') if w]

    def field(packed, n, total, offset, bits):
        packed = np.concatenate([packed, np.zeros(16, 'u1')])
        start = np.arange(n, dtype=np.int64) * total + offset
        value = np.zeros(n, np.uint64)
        for k in range(8):
            value |= packed[(start >> 3) + k].astype(np.uint64) << np.uint64(8 * k)
        return ((value >> (start & 7).astype(np.uint64)) & np.uint64((1 << bits) - 1)).astype(np.int64)

    log = np.log(1.0001)
    owner = np.repeat(np.arange(counts[0]), np.diff(one['n'].astype(np.int64)))
    n = len(owner)
    before = field(two, n, middle, 0, word)
    chance2 = tables[0][field(two, n, middle, word + 16, 16)] * log
    links = field(two, n + 1, middle, word + 32, link)
    pair = np.repeat(np.arange(n), np.maximum(0, np.diff(links)))
    before2 = field(three, len(pair), last, 0, word)
    chance3 = tables[2][field(three, len(pair), last, word, 16)] * log
    return words, one['p'][:-1] * log, owner, before, chance2.astype(float), pair, before2, chance3.astype(float)


def main(model, listed):
    words, chance, owner, before, chance2, pair, before2, chance3 = read_model(model)
    place = {w: i for i, w in enumerate(words)}
    known = [w for w in open(listed).read().split('\n') if w in place]
    rows = sorted(known, key=lambda w: -chance[place[w]])[:WORDS]
    order = [words[i] for i in np.argsort(-chance)]
    columns = [w for w in order if w[0].isalpha()][:NEIGHBOURS - 1] + ['<s>']
    row, column = np.full(len(words), -1), np.full(len(words), -1)
    for i, w in enumerate(rows):
        row[place[w]] = i
    for i, w in enumerate(columns):
        column[place[w]] = i
    column[place['</s>']] = NEIGHBOURS - 1

    def matrix(r, c, v):
        kept = (r >= 0) & (c >= 0) & (v > 0)
        return sp.csr_matrix((np.minimum(v[kept], 7), (r[kept], c[kept])), shape=(len(rows), NEIGHBOURS))

    near = chance2 - chance[owner]
    # What the model gives two words apart: the chance of the pair through each word between, summed.
    key = owner.astype(np.int64) * 100000 + before
    sorted_keys = np.argsort(key)
    wanted = before[pair].astype(np.int64) * 100000 + before2
    at = np.minimum(np.searchsorted(key[sorted_keys], wanted), len(key) - 1)
    found = key[sorted_keys][at] == wanted
    joint = np.where(found, chance2[sorted_keys[at]], -20) + chance3 + chance[before2]
    size = len(words)
    apart = sp.coo_matrix((np.exp(joint), (before2, owner[pair])), shape=(size, size)).tocsr().tocoo()
    # 3: only a part of the mass is kept in the model.
    far = np.clip(np.log(apart.data) - chance[apart.row] - chance[apart.col] + 3, 0, 6) * 0.6
    whole = sp.hstack([
        matrix(row[owner], column[before], near),
        matrix(row[before], column[owner], near),
        matrix(row[apart.col], column[apart.row], far),
        matrix(row[apart.row], column[apart.col], far),
    ]).tocsr()
    left, values, right = svds(whole, k=DIMS, random_state=1)
    order = np.argsort(-values)
    left, values, right = left[:, order], values[order], right[order]
    left, right = left * values**0.5, (right.T * values**0.5)
    pack = lambda m: (np.abs(m).max(), np.round(m / np.abs(m).max() * 127).astype('i1'))
    left_scale, left = pack(left)
    right_scale, right = pack(right)
    folder = 'scripts/build/data/'
    with open(folder + 'company.bin', 'wb') as file:
        file.write(struct.pack('<3I2f', len(rows), NEIGHBOURS, DIMS, left_scale, right_scale))
        file.write(left.tobytes() + right.tobytes())
    with open(folder + 'company-words.txt', 'w') as file:
        file.write('\n'.join(rows) + '\n\n' + '\n'.join(columns) + '\n')


main(*sys.argv[1:])
