package org.daybank.core.sun;

/** How the diffuse light of the sky is spread over it, which decides how much of it a tilted plane sees. */
public enum SkyModel {
    /** Equally from everywhere (Liu and Jordan 1960): careful, a few per cent low on planes that face the equator. */
    ISOTROPIC,
    /** A part from around the sun, as much as the beam is strong; the rest equally from everywhere (Hay and Davies 1980). */
    HAY_DAVIES,
    /**
     * As Hay and Davies, with brightness around the sun and along the horizon found from clearness and brightness of the sky
     * (Perez and others 1990); for hours, not for means.
     */
    PEREZ
}
