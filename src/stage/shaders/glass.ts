/** A thin pane: what it mirrors is added to what is seen through it; both its faces mirror. */
import type { SurfaceText } from './surfaceText';

export const glass: SurfaceText = {
  mirrors: 'boxes',
  direct: /* glsl */ `
	float angle = acos( clamp( dot( reflect( - geometryViewDir, geometryNormal ), directLight.direction ), - 1.0, 1.0 ) );
	float rim = clamp( fwidth( angle ), 0.1 * lampSpread, 0.6 * lampSpread );
	float disc = 1.0 - smoothstep( lampSpread - rim, lampSpread + rim, angle );
	float mirrored = 0.02 + 0.98 * pow( 1.0 - saturate( dot( geometryNormal, geometryViewDir ) ), 5.0 );
	reflectedLight.directSpecular += disc * mirrored * min( RECIPROCAL_PI / ( lampSpread * lampSpread ), 60.0 ) * lampLight;
`,
};
