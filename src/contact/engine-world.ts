/**
 * A body and a floor in a contact engine (matter-js). The engine’s y points down and its angles with it; its lengths
 * are pixels, its times milliseconds, its velocities ways in a sixtieth of a second. Outside of this file x is forward,
 * y up, the lean counter-clockwise and everything SI, as everywhere.
 */
import Matter from 'matter-js';
import { minus, times, type Point } from '../geometry/point.js';
import type { MassProperties } from '../mass.js';
import { g } from '../rolling/gravity.js';

const { Bodies, Body, Composite, Engine, Events, Vector } = Matter;

/**
 * Engine lengths a metre. Few: what comes in faster than half a length a step the engine takes for a blow. Measured: from
 * 1 to a million the period moves by 0.01 %.
 */
const scale = 10;
/** What the engine counts velocities by, seconds. */
const velocityTime = 1 / 60;
/** Enough that more change nothing (measured from 1 to 80). */
const iterations = { positionIterations: 36, velocityIterations: 30 };
/** How deep a body may sink before it is pushed out, of g Δt² and as the engine wants it: times 60 Δt. */
const sinking = 1.2;
/** Wider than any way rolled here. */
const floorSize = { width: 100 * scale, height: 10 * scale };
/** The engine is left the normal contact only. */
const frictionless = { friction: 0, frictionStatic: 0, frictionAir: 0, restitution: 0 };

/** A force, newton, and a moment about the centre of gravity, newton metre, counter-clockwise. */
export interface Put {
  readonly force: Point;
  readonly moment: number;
}

/** How a body stands and turns. */
export interface Pose {
  /** Radians, and radians a second. */
  readonly lean: number;
  readonly rate: number;
  /** The centre of gravity on the floor, metres. */
  readonly centre: Point;
}

export interface Start {
  /** Radians, and radians a second. */
  readonly lean: number;
  readonly rate: number;
  /** Of the centre of gravity on the floor, metres. */
  readonly x: number;
}

export interface EngineWorld {
  readonly pose: () => Pose;
  /** Of the place of the body that is at its centre of gravity, metres a second. */
  readonly velocity: () => Point;
  /** The lowest vertex, metres over the floor. */
  readonly lowest: () => number;
  /** Moves it on by a step; `moved` is called when it has moved and before the floor pushes. */
  readonly step: (moved: () => void) => void;
  /** Puts a force on it for a step, at once. */
  readonly strike: (put: Put) => void;
  /** From here on its mass lies otherwise in it, `way` off in floor axes; it moves on as it did. */
  readonly redistribute: (way: Point, inertia: number) => void;
}

/**
 * @param hull vertices in order of lean, chair’s frame, metres
 * @param step seconds
 * @param start it stands on the floor and rolls without slip
 */
export function engineWorld(
  hull: readonly Point[],
  properties: MassProperties,
  step: number,
  start: Start,
): EngineWorld {
  const engine = Engine.create({ ...iterations, enableSleeping: false });
  engine.gravity.scale = g * scale * 1e-6;
  const body = bodyOf(hull, properties, step);
  Composite.add(engine.world, [body, floorUnder(start.x, step)]);
  stand(body, start, step);
  let afterMove = (): void => undefined;
  Events.on(engine, 'beforeSolve', () => {
    afterMove();
  });
  const { mass } = properties;
  return {
    pose: () => ({
      lean: -body.angle,
      rate: -Body.getAngularVelocity(body) / velocityTime,
      centre: fromEngine(body.position),
    }),
    velocity: () => times(fromEngine(Body.getVelocity(body)), 1 / velocityTime),
    lowest: () => fromEngine(lowestOf(body)).y,
    step: (moved) => {
      afterMove = moved;
      Engine.update(engine, step * 1000);
    },
    strike: ({ force, moment }) => {
      const faster = Vector.mult(toEngine(force), (step * velocityTime) / mass);
      Body.setVelocity(body, Vector.add(Body.getVelocity(body), faster));
      const turn = (moment * step * velocityTime * scale ** 2) / body.inertia;
      Body.setAngularVelocity(body, Body.getAngularVelocity(body) - turn);
    },
    redistribute: (way, inertia) => {
      Body.setCentre(body, toEngine(way), true);
      Body.setInertia(body, inertia * scale ** 2);
    },
  };
}

const slopFor = (step: number): number => (sinking * g * step * scale) / 60;

function bodyOf(
  hull: readonly Point[],
  { mass, centre, inertia }: MassProperties,
  step: number,
): Matter.Body {
  // In order of lean is clockwise seen with y up, counter-clockwise on the engine’s screen: it wants the other.
  const vertices = hull.map(toEngine).reverse();
  const body = Body.create({ vertices, ...frictionless, slop: slopFor(step) });
  // It has moved the centroid to its own zero.
  const moved = Vector.sub(body.vertices[0]!, toEngine(hull.at(-1)!));
  Body.setCentre(body, Vector.add(toEngine(centre), moved));
  // In this order: setMass rescales the inertia.
  Body.setMass(body, mass);
  Body.setInertia(body, inertia * scale ** 2);
  // Every facet is an axis to the engine; against a wide level floor the floor’s own decide.
  body.axes = [Vector.create(1, 0)];
  return body;
}

function floorUnder(x: number, step: number): Matter.Body {
  const { width, height } = floorSize;
  const floor = Bodies.rectangle(x * scale, height / 2, width, height, {
    isStatic: true,
    slop: slopFor(step),
  });
  // Making it static gave it some.
  floor.friction = 0;
  return floor;
}

function stand(body: Matter.Body, { lean, rate, x }: Start, step: number): void {
  Body.setAngle(body, -lean);
  Body.setPosition(body, Vector.create(x * scale, body.position.y - lowestOf(body).y));
  // Before its first step the engine takes a step for a sixtieth of a second.
  (body as SteppedBody).deltaTime = step * 1000;
  const over = minus(body.position, lowestOf(body));
  const turn = -rate * velocityTime;
  Body.setAngularVelocity(body, turn);
  Body.setVelocity(body, Vector.create(-turn * over.y, turn * over.x));
}

const toEngine = ({ x, y }: Point): Matter.Vector => Vector.create(x * scale, -y * scale);
const fromEngine = ({ x, y }: Point): Point => ({ x: x / scale, y: -y / scale });

function lowestOf({ vertices }: Matter.Body): Matter.Vector {
  let lowest = vertices[0]!;
  for (const vertex of vertices) if (vertex.y > lowest.y) lowest = vertex;
  return lowest;
}

/** What this leans on of the engine that its types do not tell. */
interface SteppedBody extends Matter.Body {
  deltaTime: number;
}
