// Offscreen look at the sculpture: builds a three scene from the meshes that the script serves.
import * as THREE from 'three';

const job = await (await fetch('/job.json')).json();
const read = async (name, Type) => new Type(await (await fetch(`/data/${name}`)).arrayBuffer());

const renderer = new THREE.WebGLRenderer({ antialias: true, preserveDrawingBuffer: true });
renderer.setPixelRatio(1);
renderer.setSize(job.width, job.height);
document.body.append(renderer.domElement);
renderer.toneMapping = THREE.AgXToneMapping;
renderer.toneMappingExposure = 1.3;
renderer.shadowMap.enabled = true;
renderer.shadowMap.type = THREE.PCFShadowMap;
const scene = new THREE.Scene();
scene.background = new THREE.Color(0x777777);

function room() {
  const boxes = new THREE.Scene();
  boxes.background = new THREE.Color(0x2a2a2a);
  const panel = (w, h, at, power) => {
    const m = new THREE.Mesh(
      new THREE.PlaneGeometry(w, h),
      new THREE.MeshBasicMaterial({
        color: new THREE.Color(1, 1, 1).multiplyScalar(power),
        side: THREE.DoubleSide,
      }),
    );
    m.position.set(...at);
    m.lookAt(0, 0, 0);
    boxes.add(m);
  };
  panel(4, 4, [-4, 3.5, 4], 9);
  panel(3, 5, [5, 1, 2.5], 3.4);
  panel(2, 4, [3, 2, -5], 7);
  panel(2, 4, [-4, 1, -4], 4);
  panel(8, 8, [0, 7, 0], 1.2);
  panel(10, 10, [0, -5, 0], 0.35);
  return new THREE.PMREMGenerator(renderer).fromScene(boxes, 0.02).texture;
}
scene.environment = room();
scene.environmentIntensity = 0.45;

const key = new THREE.DirectionalLight(0xffffff, 2.4);
key.position.set(-800, 800, 1000);
key.castShadow = true;
key.shadow.mapSize.set(2048, 2048);
Object.assign(key.shadow.camera, {
  left: -260,
  right: 260,
  top: 200,
  bottom: -320,
  near: 200,
  far: 2600,
});
key.shadow.radius = 6;
key.shadow.bias = -0.0006;
key.shadow.normalBias = 1.2;
key.shadow.intensity = 0.8;
const rim = new THREE.DirectionalLight(0xffffff, 1.3);
rim.position.set(600, 700, -1300);
rim.castShadow = true;
rim.shadow.mapSize.set(1024, 1024);
Object.assign(rim.shadow.camera, {
  left: -260,
  right: 260,
  top: 260,
  bottom: -320,
  near: 200,
  far: 3000,
});
rim.shadow.normalBias = 2;
rim.shadow.radius = 4;
scene.add(key, rim);

const materials = {
  skin: () =>
    new THREE.MeshPhysicalMaterial({
      vertexColors: true,
      roughness: 0.54,
      specularIntensity: 0.5,
      sheen: 0.35,
      sheenRoughness: 0.5,
      sheenColor: new THREE.Color(0xffc9b0),
    }),
  hair: () =>
    new THREE.MeshPhysicalMaterial({
      vertexColors: true,
      roughness: 0.5,
      specularIntensity: 0.55,
      sheen: 0.4,
      sheenColor: new THREE.Color(0xc09a80),
      side: THREE.DoubleSide,
    }),
  brows: () =>
    new THREE.MeshPhysicalMaterial({
      vertexColors: true,
      roughness: 0.9,
      specularIntensity: 0.1,
      side: THREE.DoubleSide,
    }),
  eye: () =>
    new THREE.MeshPhysicalMaterial({
      vertexColors: true,
      roughness: 0.35,
      clearcoat: 1,
      clearcoatRoughness: 0.04,
    }),
};

for (const part of job.parts) {
  const geometry = new THREE.BufferGeometry();
  geometry.setAttribute(
    'position',
    new THREE.BufferAttribute(await read(`${part.name}.positions`, Float32Array), 3),
  );
  geometry.setAttribute(
    'normal',
    new THREE.BufferAttribute(await read(`${part.name}.normals`, Float32Array), 3),
  );
  geometry.setAttribute(
    'color',
    new THREE.BufferAttribute(await read(`${part.name}.colours`, Float32Array), 3),
  );
  geometry.setIndex(new THREE.BufferAttribute(await read(`${part.name}.indices`, Uint32Array), 1));
  const material = (materials[part.substance] ?? materials.hair)();
  if (job.clay) {
    material.vertexColors = false;
    material.color.set(0xb8b2aa);
  }
  const mesh = new THREE.Mesh(geometry, material);
  mesh.castShadow = part.substance === 'skin' || part.substance === 'hair';
  mesh.receiveShadow = part.substance !== 'brows';
  scene.add(mesh);
}

const columns = job.columns;
const rows = Math.ceil(job.views.length / columns);
const w = Math.floor(job.width / columns);
const h = Math.floor(job.height / rows);
renderer.setScissorTest(true);
job.views.forEach(({ yaw, pitch, distance, half, at }, i) => {
  const camera = new THREE.PerspectiveCamera(
    (2 * Math.atan(half / distance) * 180) / Math.PI,
    w / h,
    10,
    20000,
  );
  const a = (yaw * Math.PI) / 180;
  const b = (pitch * Math.PI) / 180;
  camera.position.set(
    at[0] + distance * Math.sin(a) * Math.cos(b),
    at[1] + distance * Math.sin(b),
    at[2] + distance * Math.cos(a) * Math.cos(b),
  );
  camera.lookAt(...at);
  const x = (i % columns) * w;
  const y = job.height - h * (1 + Math.floor(i / columns));
  renderer.setViewport(x, y, w, h);
  renderer.setScissor(x, y, w, h);
  renderer.render(scene, camera);
});
window.done = true;
