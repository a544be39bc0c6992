/**
 * What `src/contact` leans on of matter-js beyond its documented interface, each by itself: a version that changes one of
 * these fails here and says which.
 */
import { readFileSync } from 'node:fs';
import Matter from 'matter-js';
import { describe, expect, it } from 'vitest';

const { Bodies, Body, Composite, Engine, Events, Vector } = Matter;

interface Stepped extends Matter.Body {
  deltaTime: number;
}

const square = (): Matter.Vector[] =>
  [
    [0, 0],
    [4, 0],
    [4, 4],
    [0, 4],
  ].map(([x, y]) => Vector.create(x, y));
const plain = { friction: 0, frictionStatic: 0, frictionAir: 0, restitution: 0 };

function alone(gravity: number): { engine: Matter.Engine; body: Matter.Body } {
  const engine = Engine.create({ enableSleeping: false });
  engine.gravity.scale = gravity;
  const body = Body.create({ vertices: square(), ...plain });
  Composite.add(engine.world, body);
  return { engine, body };
}

describe('matter-js', () => {
  it('is the version that all of this was measured with', () => {
    const { version } = JSON.parse(readFileSync('node_modules/matter-js/package.json', 'utf8')) as {
      version: string;
    };
    expect(version).toBe('0.20.0');
  });

  it('takes vertices clockwise on its screen, and moves their centroid to its zero', () => {
    const body = Body.create({ vertices: square(), ...plain });
    expect(body.position).toEqual({ x: 0, y: 0 });
    expect(body.vertices.map(({ x, y }) => [x, y])).toEqual([
      [-2, -2],
      [2, -2],
      [2, 2],
      [-2, 2],
    ]);
    expect(Matter.Vertices.contains(body.vertices, Vector.create(1, 1))).toBe(true);
  });

  it('moves the centre of gravity without moving vertices or changing the velocity', () => {
    const { body } = alone(0);
    Body.setVelocity(body, Vector.create(3, -1));
    Body.setCentre(body, Vector.create(1, 0.5), true);
    expect(body.position).toEqual({ x: 1, y: 0.5 });
    expect(body.vertices[0]).toMatchObject({ x: -2, y: -2 });
    expect(Body.getVelocity(body).x).toBeCloseTo(3, 12);
    Body.setCentre(body, Vector.create(0, 0));
    expect(body.vertices[0]).toMatchObject({ x: -2, y: -2 });
  });

  it('scales the inertia with the mass, and takes an inertia as it is after that', () => {
    const { body } = alone(0);
    const { inertia, mass } = body;
    Body.setMass(body, mass / 2);
    expect(body.inertia).toBeCloseTo(inertia / 2, 9);
    Body.setInertia(body, 7);
    expect([body.inertia, body.inverseInertia]).toEqual([7, 1 / 7]);
  });

  it('counts velocities by the sixtieth of a second whatever the step, once it knows the step', () => {
    for (const step of [1000 / 60, 1000 / 240, 1]) {
      const { engine, body } = alone(0);
      (body as Stepped).deltaTime = step;
      Body.setVelocity(body, Vector.create(6, 0));
      Body.setAngularVelocity(body, 0.06);
      Engine.update(engine, step);
      expect(Body.getVelocity(body).x).toBeCloseTo(6, 9);
      expect(Body.getAngularVelocity(body)).toBeCloseTo(0.06, 9);
      expect(body.position.x).toBeCloseTo((6 * step * 60) / 1000, 9);
      expect(body.angle).toBeCloseTo((0.06 * step * 60) / 1000, 9);
    }
  });

  it('falls by gravity before it moves', () => {
    const { engine, body } = alone(0.001);
    (body as Stepped).deltaTime = 4;
    Engine.update(engine, 4);
    expect(body.position.y).toBeCloseTo(0.001 * 4 ** 2, 12);
  });

  it('tells of itself after it has moved bodies and before the contacts, and heeds velocities set then', () => {
    const { engine, body } = alone(0);
    (body as Stepped).deltaTime = 5;
    Body.setVelocity(body, Vector.create(1, 0));
    const seen: number[] = [];
    Events.on(engine, 'beforeSolve', () => {
      seen.push(body.position.x);
      Body.setVelocity(body, Vector.create(2, 0));
    });
    Engine.update(engine, 5);
    Engine.update(engine, 5);
    expect(seen[0]).toBeCloseTo(0.3, 12);
    expect(seen[1]).toBeCloseTo(0.9, 12);
  });

  it('leaves a body without friction its speed along the floor, and stops it across', () => {
    const { engine, body } = alone(0.001);
    const floor = Bodies.rectangle(0, 7, 1000, 10, { isStatic: true });
    floor.friction = 0;
    Composite.add(engine.world, floor);
    (body as Stepped).deltaTime = 4;
    Body.setVelocity(body, Vector.create(0.5, 0));
    for (let i = 0; i < 100; i++) Engine.update(engine, 4);
    expect(Body.getVelocity(body).x).toBeCloseTo(0.5, 9);
    expect(Math.abs(Body.getVelocity(body).y)).toBeLessThan(1e-3);
  });

  it('finds the floor of a body that shows it one axis only', () => {
    const ways = [square(), square()].map((vertices, i) => {
      const engine = Engine.create({ enableSleeping: false });
      engine.gravity.scale = 0.001;
      const body = Body.create({ vertices, ...plain });
      if (i === 1) body.axes = [Vector.create(1, 0)];
      Body.setAngle(body, 0.3);
      const floor = Bodies.rectangle(0, 9, 1000, 10, { isStatic: true });
      floor.friction = 0;
      Composite.add(engine.world, [body, floor]);
      (body as Stepped).deltaTime = 4;
      return Array.from({ length: 200 }, () => {
        Engine.update(engine, 4);
        return [body.position.y, body.angle];
      });
    });
    expect(ways[1]).toEqual(ways[0]);
    // It did come down and turn.
    expect(ways[0]!.at(-1)![1]).not.toBeCloseTo(0.3, 2);
  });

  it('pushes a sunk body out to the depth that it is let sink, scaled by the step', () => {
    for (const step of [1000 / 60, 1000 / 240]) {
      const { engine, body } = alone(0);
      body.slop = 0.2;
      const floor = Bodies.rectangle(0, 6.5, 1000, 10, { isStatic: true, slop: 0.2 });
      Composite.add(engine.world, floor);
      for (let i = 0; i < 400; i++) Engine.update(engine, step);
      const deep = Math.max(...body.vertices.map(({ y }) => y)) - 1.5;
      expect(deep).toBeCloseTo((0.2 * step * 60) / 1000, 2);
    }
  });
});
