#!/usr/bin/python3
"""First integers of seeded streams, from the published definitions of splitmix64 and xoshiro256** in whole-number arithmetic.
usage: random_stream.py > ../computed/random_stream.csv

It prints first, as a check of itself, the values known for xoshiro256** from the state 1, 2, 3, 4 and for splitmix64 from
1234567 (both circulate in many libraries' tests; quoted from memory, and this script gives every digit)."""
MASK = (1 << 64) - 1
GAMMA = 0x9E3779B97F4A7C15


def mix(z):
    z = ((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9) & MASK
    z = ((z ^ (z >> 27)) * 0x94D049BB133111EB) & MASK
    return z ^ (z >> 31)


def splitmix(counter, n):
    return [mix((counter + i * GAMMA) & MASK) for i in range(1, n + 1)]


def rotl(x, k):
    return ((x << k) | (x >> (64 - k))) & MASK


def xoshiro(state, n):
    s, out = list(state), []
    for _ in range(n):
        out.append(rotl(s[1] * 5 & MASK, 7) * 9 & MASK)
        t = s[1] << 17 & MASK
        s[2] ^= s[0]
        s[3] ^= s[1]
        s[1] ^= s[2]
        s[0] ^= s[3]
        s[2] ^= t
        s[3] = rotl(s[3], 45)
    return out


assert splitmix(1234567, 2) == [6457827717110365317, 3203168211198807973]
assert xoshiro([1, 2, 3, 4], 4) == [11520, 0, 1509978240, 1215971899390074240]
print("# seed, stream, then the first four integers; see scripts/random_stream.py")
print("seed,stream,v1,v2,v3,v4")
for seed, stream in [(0, 0), (0, 1), (1, 0), (20261125, 244), (MASK, MASK)]:
    counter = mix((splitmix(seed, 1)[0] + stream) & MASK)
    print(seed, stream, *xoshiro(splitmix(counter, 4), 4), sep=",")
