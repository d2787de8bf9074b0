plugins {
    alias(libs.plugins.android)
    alias(libs.plugins.kotlin.compose)
}

android {
    namespace = "org.slowbend.app"
    compileSdk = libs.versions.sdk.compile.get().toInt()
    defaultConfig {
        applicationId = "org.slowbend.app"
        minSdk = libs.versions.sdk.min.get().toInt()
        targetSdk = libs.versions.sdk.target.get().toInt()
        versionCode = 1
        versionName = "0.1"
        ndk { abiFilters += listOf("arm64-v8a", "x86_64") }
    }
    buildTypes {
        release {
            isMinifyEnabled = true
            isShrinkResources = true
            proguardFiles(getDefaultProguardFile("proguard-android-optimize.txt"), "rules.pro")
        }
    }
    compileOptions {
        sourceCompatibility = JavaVersion.VERSION_17
        targetCompatibility = JavaVersion.VERSION_17
    }
    buildFeatures { compose = true }
    // What bindings/generate and cargo-ndk made; android/README.md says how.
    sourceSets["main"].kotlin.srcDir(layout.buildDirectory.dir("bindings/kotlin"))
    sourceSets["main"].jniLibs.srcDir(layout.buildDirectory.dir("jniLibs"))
    testOptions { unitTests.isIncludeAndroidResources = true }
}

val bindings by tasks.registering(Exec::class) {
    workingDir = rootDir.parentFile
    commandLine("bindings/generate", layout.buildDirectory.dir("bindings").get().asFile.path)
}

val native by tasks.registering(Exec::class) {
    workingDir = rootDir.parentFile
    environment("RUSTFLAGS", "-C link-arg=-Wl,-z,max-page-size=16384")
    commandLine(
        "cargo", "ndk", "-t", "arm64-v8a", "-t", "x86_64", "-P", libs.versions.sdk.min.get(),
        "-o", layout.buildDirectory.dir("jniLibs").get().asFile.path,
        "build", "--locked", "--release", "--package", "slowbend-bindings",
    )
}

tasks.named("preBuild") { dependsOn(bindings, native) }

dependencies {
    implementation(libs.activity.compose)
    implementation(libs.core.ktx)
    implementation(libs.compose.ui)
    implementation(libs.compose.foundation)
    implementation(libs.material3)
    implementation(libs.lifecycle.viewmodel.compose)
    implementation(libs.coroutines.android)
    implementation(libs.jna) { artifact { type = "aar" } }
    testImplementation(libs.junit)
    testImplementation(libs.robolectric)
    testImplementation(libs.roborazzi)
    testImplementation(libs.compose.ui.test)
    testImplementation(libs.test.core)
    testImplementation(libs.test.junit)
    debugImplementation(libs.compose.ui.test.manifest)
}
