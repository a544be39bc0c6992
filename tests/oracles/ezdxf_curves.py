"""What ezdxf (https://ezdxf.mozman.at, MIT) makes of a DXF drawing, for a test to hold against the reader of this project.

    ezdxf_curves.py write SEED   writes a drawing with every entity that is read, its numbers drawn by SEED
    ezdxf_curves.py curves       reads a drawing from standard input: its curves as JSON

Curves are in the drawing's plane, blocks put in. Every smooth span is evaluated exactly at n, 2n and 4n places; length, area
and moments of the polygons are extrapolated (Richardson).
"""
import io
import json
import math
import random
import sys

import ezdxf
from ezdxf.math import OCS, Vec3

PLACES = 64


def spans(entity):
    """The smooth spans of an entity: functions of 0..1 to (x, y)."""
    kind = entity.dxftype()
    if kind == "LINE":
        a, b = entity.dxf.start, entity.dxf.end
        return [lambda u: (a.x + u * (b.x - a.x), a.y + u * (b.y - a.y))]
    if kind in ("ARC", "CIRCLE"):
        centre, radius = entity.dxf.center, entity.dxf.radius
        ocs = OCS(entity.dxf.extrusion)
        start = math.radians(entity.dxf.start_angle) if kind == "ARC" else 0.0
        end = math.radians(entity.dxf.end_angle) if kind == "ARC" else math.tau
        sweep = (end - start) % math.tau or math.tau

        def on(u):
            t = start + u * sweep
            p = ocs.to_wcs(Vec3(centre.x + radius * math.cos(t), centre.y + radius * math.sin(t), centre.z))
            return (p.x, p.y)

        return quarters(on)
    if kind == "ELLIPSE":
        a, b = entity.dxf.start_param, entity.dxf.end_param
        sweep = (b - a) % math.tau
        sweep = math.tau if sweep < 1e-9 else sweep

        def on(u):
            p = next(iter(entity.vertices([a + u * sweep])))
            return (p.x, p.y)

        return quarters(on)
    if kind == "SPLINE":
        tool = entity.construction_tool()
        every, degree = list(tool.knots()), tool.degree
        knots = sorted(set(every[degree : len(every) - degree]))

        def between(a, b):
            def on(u):
                p = tool.point(min(b, a + u * (b - a)))
                return (p.x, p.y)

            return on

        return [between(a, b) for a, b in zip(knots, knots[1:]) if b > a]
    if kind in ("LWPOLYLINE", "POLYLINE"):
        return chained([spans(part) for part in entity.virtual_entities()])
    return []


def quarters(on):
    def part(i):
        return lambda u: on((i + u) / 4)

    return [part(i) for i in range(4)]


def chained(parts):
    """The spans of parts, turned so that each part begins where the one before ends: arcs come out counter-clockwise."""

    def turned(part):
        return [(lambda s: lambda u: s(1.0 - u))(span) for span in reversed(part)]

    def gap(part, place):
        return math.dist(part[0](0.0), place)

    done = []
    for i, part in enumerate(parts):
        if i > 0:
            part = min(part, turned(part), key=lambda each: gap(each, done[-1](1.0)))
        elif len(parts) > 1:
            nexts = [parts[1][0](0.0), parts[1][-1](1.0)]
            part = min(part, turned(part), key=lambda each: min(math.dist(each[-1](1.0), end) for end in nexts))
        done += part
    return done


def sums(places):
    """Length, signed area, first moments, and the polar moment about [0, 0], of the polygon through places."""
    length = area = sx = sy = polar = 0.0
    for (x, y), (X, Y) in zip(places, places[1:]):
        length += math.hypot(X - x, Y - y)
        c = x * Y - X * y
        area += c / 2
        sx += c * (x + X) / 6
        sy += c * (y + Y) / 6
        polar += c * (x * x + x * X + X * X + y * y + y * Y + Y * Y) / 12
    return [length, area, sx, sy, polar]


def measured(found):
    def at(n):
        places = [found[0](0.0)]
        for span in found:
            places += [span(i / n) for i in range(1, n + 1)]
        return sums(places)

    one, two, four = at(PLACES), at(2 * PLACES), at(4 * PLACES)
    first = [b + (b - a) / 3 for a, b in zip(one, two)]
    second = [b + (b - a) / 3 for a, b in zip(two, four)]
    return [b + (b - a) / 15 for a, b in zip(first, second)]


def curves(entities):
    for entity in entities:
        kind = entity.dxftype()
        if kind == "INSERT":
            for single in entity.multi_insert() if entity.mcount > 1 else [entity]:
                yield from curves(single.virtual_entities())
            continue
        found = spans(entity)
        if not found:
            continue
        start, end = found[0](0.0), found[-1](1.0)
        length, area, sx, sy, polar = measured(found)
        extent = max(length, 1e-12)
        yield {
            "type": kind,
            "length": length,
            "closed": math.dist(start, end) < 1e-9 * extent,
            "area": area,
            "first": [sx, sy],
            "polar": polar,
            "ends": [start, end],
        }


def write(seed):
    pick = random.Random(seed)
    doc = ezdxf.new("R2010")
    doc.header["$INSUNITS"] = 4
    msp = doc.modelspace()

    def near(size=100.0):
        return (pick.uniform(-size, size), pick.uniform(-size, size))

    def fill(space, bent=True):
        behind = {"extrusion": (0, 0, -1)}
        space.add_line(near(), near())
        space.add_arc(near(), pick.uniform(5, 60), pick.uniform(0, 360), pick.uniform(0, 360))
        space.add_arc(near(), pick.uniform(5, 60), pick.uniform(0, 360), pick.uniform(0, 360), dxfattribs=behind)
        space.add_circle(near(), pick.uniform(5, 60))
        space.add_circle(near(), pick.uniform(5, 60), dxfattribs=behind)
        space.add_ellipse(near(), near(), pick.uniform(0.2, 1))
        space.add_ellipse(near(), near(), pick.uniform(0.2, 1), pick.uniform(0, 6), pick.uniform(0, 6))
        if bent:
            bend(space, behind)
        space.add_open_spline([near() for _ in range(7)])
        space.add_open_spline([near() for _ in range(6)], degree=2)
        space.add_rational_spline([near() for _ in range(6)], [pick.uniform(0.5, 2) for _ in range(6)])
        space.add_spline().set_closed([(*near(), 0) for _ in range(6)])

    def bend(space, behind):
        bulged = [(*near(), pick.choice([0, pick.uniform(-1.5, 1.5)])) for _ in range(6)]
        space.add_lwpolyline(bulged, format="xyb", close=True)
        space.add_lwpolyline(bulged, format="xyb", dxfattribs=behind)
        space.add_polyline2d(bulged, format="xyb", close=True)

    fill(msp)
    inner = doc.blocks.new("inner", base_point=near(20))
    fill(inner)
    # Scaled unevenly ezdxf takes polylines apart.
    plain = doc.blocks.new("plain", base_point=near(20))
    fill(plain, bent=False)
    outer = doc.blocks.new("outer", base_point=near(20))
    outer.add_circle(near(), 7)
    outer.add_blockref("inner", near(), {"xscale": -1, "yscale": 1, "rotation": pick.uniform(0, 360)})
    even = pick.uniform(0.3, 3)
    msp.add_blockref("inner", near(), {"xscale": even, "yscale": even, "rotation": pick.uniform(0, 360)})
    msp.add_blockref("plain", near(), {"xscale": 0.5, "yscale": 1.7, "rotation": pick.uniform(0, 360)})
    msp.add_blockref("outer", near(), {"xscale": even, "yscale": -even, "rotation": pick.uniform(0, 360)})
    rows = {"row_count": 2, "column_count": 3, "row_spacing": 31, "column_spacing": 17}
    msp.add_blockref("inner", near(), {"rotation": pick.uniform(0, 360), **rows})
    msp.add_blockref("inner", near(), {"extrusion": (0, 0, -1), "rotation": pick.uniform(0, 360)})
    out = io.StringIO()
    doc.write(out)
    sys.stdout.write(out.getvalue())


if sys.argv[1] == "write":
    write(int(sys.argv[2]))
elif sys.argv[1] == "curves":
    text = sys.stdin.buffer.read().decode("utf-8", errors="replace")
    drawing = ezdxf.read(io.StringIO(text.replace("\r\n", "\n")))
    json.dump(list(curves(drawing.modelspace())), sys.stdout)
elif sys.argv[1] == "--version":
    print(ezdxf.__version__)
